package org.drysill.options.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.physics.Range;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.ColdSpotKind;
import org.drysill.survey.Wall;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;

/** A home with other windows, warmer cold spots or warmer rooms, to be assessed again. */
final class ChangedHome {
  private ChangedHome() {}

  /** The home with a glazing in some of its windows; what was read on the old panes is dropped. */
  static Home glazed(Home home, List<String> windows, String glazing) {
    return home.withRooms(
        facts ->
            facts.with(
                facts
                    .room()
                    .with(
                        facts.room().windows().stream()
                            .map(w -> windows.contains(w.id()) ? glazed(w, glazing) : w)
                            .toList(),
                        facts.room().coldSpots(),
                        facts.room().walls())));
  }

  /** The home with some of its cold spots changed. */
  static Home warmer(Home home, List<String> spots, UnaryOperator<ColdSpot> warmer) {
    return home.withRooms(
        facts ->
            facts.with(
                facts
                    .room()
                    .with(
                        facts.room().windows(),
                        facts.room().coldSpots().stream()
                            .map(s -> spots.contains(s.id()) ? warmer.apply(s) : s)
                            .toList(),
                        facts.room().walls())));
  }

  /** The home with the walls of some rooms insulated: each then has a factor in place of layers. */
  static Home insulated(
      Home home, List<String> rooms, Function<String, Optional<Range>> factorOfWall) {
    return home.withRooms(r -> rooms.contains(r.id()) ? insulated(r, factorOfWall) : r);
  }

  private static RoomFacts insulated(
      RoomFacts facts, Function<String, Optional<Range>> factorOfWall) {
    List<ColdSpot> spots = new ArrayList<>(facts.room().coldSpots());
    for (Wall wall : facts.room().walls()) {
      factorOfWall.apply(wall.id()).map(f -> plane(wall, f)).ifPresent(spots::add);
    }
    return facts.with(facts.room().with(facts.room().windows(), spots, List.of()));
  }

  private static ColdSpot plane(Wall wall, Range factor) {
    return new ColdSpot(
        wall.id(),
        wall.name(),
        ColdSpotKind.WALL,
        Optional.empty(),
        List.of(),
        Optional.of(quantity(factor)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  private static Quantity quantity(Range factor) {
    return new Quantity(factor.likely(), factor.low(), factor.high(), "with the measure");
  }

  /** The home with some rooms warmer by a number of kelvin. */
  static Home heated(Home home, List<String> rooms, Range kelvin) {
    return home.withRooms(r -> rooms.contains(r.id()) ? heated(r, kelvin) : r);
  }

  /** A cold spot with a temperature factor instead of its readings. */
  static ColdSpot factored(ColdSpot spot, Range factor) {
    return new ColdSpot(
        spot.id(),
        spot.name(),
        spot.kind(),
        spot.material(),
        List.of(),
        Optional.of(quantity(factor)),
        Optional.empty(),
        spot.mouldSeen(),
        spot.mouldArea(),
        spot.photos(),
        spot.notes());
  }

  private static Window glazed(Window window, String glazing) {
    return new Window(
        window.id(),
        window.name(),
        window.orientation(),
        window.width(),
        window.height(),
        Optional.of(glazing),
        Optional.empty(),
        window.frame(),
        window.backgroundVentilator(),
        window.opening(),
        List.of(),
        window.condensationSeen(),
        window.photos());
  }

  private static RoomFacts heated(RoomFacts facts, Range kelvin) {
    Figure old = facts.setpoint();
    return new RoomFacts(
        facts.room(),
        facts.name(),
        facts.floorArea(),
        facts.height(),
        facts.volume(),
        new Figure(
            old.id(), old.name(), old.value().plus(kelvin), old.unit(), old.basis(), old.how()));
  }
}
