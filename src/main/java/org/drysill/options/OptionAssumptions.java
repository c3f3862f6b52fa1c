package org.drysill.options;

import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Assumption;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.reference.Sourced;
import org.drysill.reference.measures.OptionDefaults;

/** What the study of options takes for granted. */
final class OptionAssumptions {
  private OptionAssumptions() {}

  static List<Assumption> of(OptionsBasis basis, Assessment assessment) {
    OptionDefaults defaults = basis.defaults();
    Home home = assessment.home();
    return Stream.of(
            always(defaults).stream(),
            loads(basis, assessment),
            sizes(defaults, home),
            walls(defaults, home))
        .flatMap(all -> all)
        .toList();
  }

  /** The water of a load, where washing is listed by its water and not by its loads. */
  private static Stream<Assumption> loads(OptionsBasis basis, Assessment assessment) {
    List<String> dried =
        basis.catalogue().measures().stream()
            .flatMap(m -> m.moisture().stream())
            .filter(m -> m.kwhPerLoad().isPresent())
            .flatMap(m -> m.sources().stream())
            .toList();
    boolean counted =
        assessment.moisture().items().stream()
            .filter(i -> dried.contains(i.kind()) && i.production().value().high() > 0)
            .allMatch(i -> i.loadsPerWeek().isPresent());
    Sourced load = basis.defaults().kgPerLoad();
    return counted
        ? Stream.empty()
        : Stream.of(
            new Assumption(
                "options.load",
                "Washing dried indoors",
                load.range().low() + " to " + load.range().high() + " kg of water a load",
                "Usual after spinning.",
                "Count the loads of a week.",
                load.source()));
  }

  /** The sides of windows, where one was not measured: prices and heat go by the area. */
  private static Stream<Assumption> sizes(OptionDefaults defaults, Home home) {
    long unmeasured =
        home.rooms().stream()
            .flatMap(r -> r.room().windows().stream())
            .filter(w -> w.width().isEmpty() || w.height().isEmpty())
            .count();
    return unmeasured == 0
        ? Stream.empty()
        : Stream.of(
            new Assumption(
                "options.window_side",
                "Sides of windows that were not measured",
                defaults.windowSide().likely() + " m each",
                "The cost of new panes goes by their area.",
                "Measure the width and the height of each window.",
                defaults.windowSide().source()));
  }

  /** The outside wall of a room with a cold place, where no area of it was given. */
  private static Stream<Assumption> walls(OptionDefaults defaults, Home home) {
    return home.rooms().stream()
            .map(RoomFacts::room)
            .filter(r -> !r.coldSpots().isEmpty())
            .allMatch(r -> r.walls().stream().anyMatch(w -> w.area().isPresent()))
        ? Stream.empty()
        : Stream.of(
            new Assumption(
                "options.wall_area",
                "Outside wall of rooms with a cold place",
                "one side of a square room of its floor area, where no wall area is given",
                "The cost of insulation goes by the area.",
                "Measure the outside wall of the room.",
                defaults.windowSide().source()));
  }

  private static List<Assumption> always(OptionDefaults defaults) {
    return List.of(
        new Assumption(
            "options.one_zone",
            "Effect of measures",
            "the home is one zone in a steady state",
            "A measure is reckoned by how it changes the ratio of water given off to outdoor air.",
            "Log temperature and humidity in each room for two cold weeks.",
            defaults.leastEffect().source()),
        new Assumption(
            "options.gains",
            "Free heat",
            defaults.gains().range().low()
                + " to "
                + defaults.gains().range().high()
                + " K below the indoor temperature the heating is off",
            "Sun, people and appliances warm an ordinary home by as much in spring and autumn.",
            "Compare the figures with the energy of a year's bills.",
            defaults.gains().source()));
  }
}
