package org.drysill.assess.home;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.dwelling.DefaultTemperature;
import org.drysill.reference.dwelling.DwellingDefaults;
import org.drysill.survey.Room;
import org.drysill.survey.RoomUse;
import org.drysill.survey.Survey;
import org.drysill.yaml.Quantity;

/** Fills the gaps of rooms: floor area, height, volume, usual temperature, name. */
final class RoomGaps {
  private static final Citation SHARED_OUT =
      new Citation(
          "Planning assumption",
          Optional.empty(),
          Optional.of("the floor area that the other rooms leave, in equal parts"),
          How.ASSUMPTION);

  private final Survey survey;
  private final DwellingDefaults defaults;
  private final Facts facts;
  private final Figure setpoint;

  RoomGaps(Survey survey, DwellingDefaults defaults, Facts facts, Figure setpoint) {
    this.survey = survey;
    this.defaults = defaults;
    this.facts = facts;
    this.setpoint = setpoint;
  }

  List<RoomFacts> fill() {
    return survey.rooms().stream().map(this::fill).toList();
  }

  private RoomFacts fill(Room room) {
    String id = "room." + room.id();
    String name = name(room);
    Figure area =
        room.floorArea()
            .map(
                q ->
                    Facts.stated(
                        id + ".floor_area", "floor area of the " + name, q, Unit.SQUARE_METRE))
            .orElseGet(() -> sharedArea(room, id, name));
    Figure height =
        room.height()
            .map(q -> Facts.stated(id + ".height", "height of the " + name, q, Unit.METRE))
            .orElseGet(() -> usualHeight(id, name));
    Figure volume =
        Facts.derived(
            id + ".volume",
            "air volume of the " + name,
            area.value().times(height.value()),
            Unit.CUBIC_METRE,
            weaker(area, height),
            "V = A × h",
            List.of(Working.Input.of("A", area), Working.Input.of("h", height)));
    Figure temperature =
        room.setpoint()
            .map(
                q ->
                    Facts.stated(
                        id + ".setpoint", "usual temperature of the " + name, q, Unit.CELSIUS))
            .or(() -> unheated(room.use()).map(usual -> unheated(room, id, name, usual)))
            .orElse(setpoint);
    return new RoomFacts(room, name, area, height, volume, temperature);
  }

  private Optional<DefaultTemperature> unheated(RoomUse use) {
    if (use == RoomUse.LOFT) {
      return Optional.of(defaults.loftTemperature());
    }
    return use == RoomUse.CELLAR ? Optional.of(defaults.cellarTemperature()) : Optional.empty();
  }

  /** As it was read, where it was colder than the home; else as such rooms usually are. */
  private Figure unheated(Room room, String id, String name, DefaultTemperature usual) {
    List<Double> read =
        room.readings().stream()
            .map(reading -> reading.temperature().value())
            .filter(celsius -> celsius < setpoint.likely())
            .toList();
    DoubleSummaryStatistics as = read.stream().mapToDouble(Double::doubleValue).summaryStatistics();
    Range celsius =
        read.isEmpty()
            ? usual.value().range()
            : new Range(as.getMin(), as.getAverage(), as.getMax());
    return facts.assumed(
        id + ".setpoint",
        "usual temperature of the " + name,
        celsius,
        Unit.CELSIUS,
        Facts.assumption(
            id + ".setpoint",
            "Usual temperature in winter of: " + name,
            String.format(Locale.ROOT, "%.1f °C", celsius.likely()),
            read.isEmpty()
                ? "It is not heated, and nobody read how warm it is."
                : "It is not heated; its reading stands for the winter.",
            "Leave a thermometer in it for some weeks of winter.",
            usual.source()));
  }

  /** The name in sentences: as given, else the id with spaces. */
  private static String name(Room room) {
    return room.name().orElseGet(() -> capital(room.id().replace('-', ' ').replace('_', ' ')));
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private Figure sharedArea(Room room, String id, String name) {
    double known =
        survey.rooms().stream()
            .flatMap(r -> r.floorArea().stream())
            .mapToDouble(Quantity::value)
            .sum();
    long unknown = survey.rooms().stream().filter(r -> r.floorArea().isEmpty()).count();
    double rest = survey.dwelling().floorArea().value() - known;
    double share = Math.max(rest / unknown, smallest(room.use()));
    String words = String.format(Locale.ROOT, "%.1f m²", share);
    return facts.assumed(
        id + ".floor_area",
        "floor area of the " + name,
        new Range(share * 0.7, share, share * 1.3),
        Unit.SQUARE_METRE,
        Facts.assumption(
            id + ".floor_area",
            "Floor area of: " + name,
            words,
            "The survey gives no area for this room.",
            "Measure the length and width of the room.",
            SHARED_OUT));
  }

  private static double smallest(RoomUse use) {
    return switch (use) {
      case WC, STORE -> 1;
      case BATHROOM, SHOWER_ROOM, UTILITY, HALL -> 3;
      case KITCHEN, KITCHEN_DINING, BEDROOM, LIVING, DINING, STUDY, LOFT, CELLAR -> 6;
    };
  }

  private Figure usualHeight(String id, String name) {
    List<Quantity> known = survey.rooms().stream().flatMap(r -> r.height().stream()).toList();
    if (!known.isEmpty()) {
      double mean = known.stream().mapToDouble(Quantity::value).average().orElseThrow();
      double low = known.stream().mapToDouble(Quantity::low).min().orElseThrow();
      double high = known.stream().mapToDouble(Quantity::high).max().orElseThrow();
      return facts.assumed(
          id + ".height",
          "height of the " + name,
          new Range(low, mean, high),
          Unit.METRE,
          Facts.assumption(
              id + ".height",
              "Height of: " + name,
              String.format(Locale.ROOT, "%.2f m", mean),
              "The mean of the rooms whose height is known.",
              "Measure from floor to ceiling.",
              defaults.roomHeight().source()));
    }
    Range usual = defaults.roomHeight().value().range();
    return facts.assumed(
        id + ".height",
        "height of the " + name,
        usual,
        Unit.METRE,
        Facts.assumption(
            "rooms.height",
            "Height of the rooms",
            String.format(Locale.ROOT, "%.1f m", usual.likely()),
            "The survey gives no height of any room.",
            "Measure one room from floor to ceiling.",
            defaults.roomHeight().source()));
  }

  static Basis weaker(Figure a, Figure b) {
    return a.basis() == Basis.ASSUMED || b.basis() == Basis.ASSUMED
        ? Basis.ASSUMED
        : Basis.CALCULATED;
  }
}
