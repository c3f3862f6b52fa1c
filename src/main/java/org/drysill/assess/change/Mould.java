package org.drysill.assess.change;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.MouldSeen;
import org.drysill.yaml.Quantity;

/**
 * Areas with mould at two visits, summed over the cold spots whose area is known at both: anything
 * else would count a place that nobody looked at as clean.
 */
final class Mould {
  private final Map<String, Range> before;
  private final Map<String, Range> after;

  Mould(Home before, Home after) {
    this.before = areas(before);
    this.after = areas(after);
    this.before.keySet().retainAll(this.after.keySet());
    this.after.keySet().retainAll(this.before.keySet());
  }

  Optional<Figure> sumBefore() {
    return sum("before", before);
  }

  Optional<Figure> sumAfter() {
    return sum("after", after);
  }

  Optional<Figure> before(String spot) {
    return Optional.ofNullable(before.get(spot)).map(area -> figure(spot, "before", area));
  }

  Optional<Figure> after(String spot) {
    return Optional.ofNullable(after.get(spot)).map(area -> figure(spot, "after", area));
  }

  /** Area of each cold spot where it is known; none seen is an area of 0. */
  private static Map<String, Range> areas(Home home) {
    Map<String, Range> areas = new LinkedHashMap<>();
    for (var room : home.rooms()) {
      for (ColdSpot spot : room.room().coldSpots()) {
        area(spot).ifPresent(area -> areas.put(spot.id(), area));
      }
    }
    return areas;
  }

  private static Optional<Range> area(ColdSpot spot) {
    return spot.mouldArea()
        .map(Quantity::range)
        .or(
            () ->
                spot.mouldSeen()
                    .filter(seen -> seen == MouldSeen.NONE)
                    .map(seen -> Range.exactly(0)));
  }

  private static Optional<Figure> sum(String when, Map<String, Range> areas) {
    if (areas.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Figure(
            "change.mould_area_" + when,
            "Area with mould " + when + ", places seen at both visits",
            areas.values().stream().reduce(Range.exactly(0), Range::plus),
            Unit.SQUARE_METRE,
            Basis.DECLARED,
            () ->
                new Working(
                    "A = Σ A(place)",
                    areas.entrySet().stream()
                        .map(
                            e ->
                                Input.of(
                                    "A(" + e.getKey() + ")",
                                    figure(e.getKey(), when, e.getValue())))
                        .toList(),
                    List.of(),
                    Optional.of("Places whose area is known at both visits only."))));
  }

  private static Figure figure(String spot, String when, Range area) {
    return new Figure(
        "change.cold_spot." + spot + ".mould_area_" + when,
        "Area with mould " + when,
        area,
        Unit.SQUARE_METRE,
        Basis.DECLARED,
        () -> new Working("as seen", List.of(), List.of(), Optional.empty()));
  }
}
