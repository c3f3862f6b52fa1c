package org.drysill.assess.change.place;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.change.shown.Judgement;
import org.drysill.assess.change.shown.Pair;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ChangeRules;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.MouldSeen;
import org.drysill.yaml.Quantity;

/**
 * Areas with mould at two visits, summed over the cold spots whose area is known at both: anything
 * else would count a place that nobody looked at as clean.
 */
public final class Mould {
  private final Map<String, Range> before;
  private final Map<String, Range> after;
  private final ChangeRules rules;

  /** Compares the areas of two visits. */
  public Mould(Home before, Home after, ChangeRules rules) {
    this.rules = rules;
    this.before = areas(before);
    this.after = areas(after);
    this.before.keySet().retainAll(this.after.keySet());
    this.after.keySet().retainAll(this.before.keySet());
  }

  /** All places together; empty where none has an area at both visits. */
  public Optional<MouldChange> all() {
    if (before.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        change("change.mould_area", new Pair(sum("before", before), sum("after", after))));
  }

  Optional<MouldChange> of(String spot) {
    if (!before.containsKey(spot)) {
      return Optional.empty();
    }
    return Optional.of(
        change(
            id(spot),
            new Pair(
                figure(spot, "before", before.get(spot)), figure(spot, "after", after.get(spot)))));
  }

  private static MouldChange change(String id, Pair pair) {
    return new MouldChange(
        pair.before(),
        pair.after(),
        pair.change(id + "_change", "Change of the area with mould", Unit.SQUARE_METRE, "A"),
        Judgement.byError(
            pair.difference(),
            pair.error(),
            String.format(Locale.ROOT, "plus or minus %.2f m²", pair.error())));
  }

  /** Area of each cold spot where it is known; none seen is an area of 0. */
  private Map<String, Range> areas(Home home) {
    Map<String, Range> areas = new LinkedHashMap<>();
    for (var room : home.rooms()) {
      for (ColdSpot spot : room.room().coldSpots()) {
        area(spot).ifPresent(area -> areas.put(spot.id(), area));
      }
    }
    return areas;
  }

  private Optional<Range> area(ColdSpot spot) {
    return spot.mouldArea()
        .map(this::estimated)
        .or(
            () ->
                spot.mouldSeen()
                    .filter(seen -> seen == MouldSeen.NONE)
                    .map(seen -> Range.exactly(0)));
  }

  /** With the bounds that the survey states, else with those of an estimate by eye. */
  private Range estimated(Quantity area) {
    return area.isRange()
        ? area.range()
        : Range.around(area.value(), area.value() * rules.mouldAreaError().value());
  }

  private static Figure sum(String when, Map<String, Range> areas) {
    return new Figure(
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
                                "A(" + e.getKey() + ")", figure(e.getKey(), when, e.getValue())))
                    .toList(),
                List.of(),
                Optional.of("Places whose area is known at both visits only.")));
  }

  private static String id(String spot) {
    return "change.cold_spot." + spot + ".mould_area";
  }

  private static Figure figure(String spot, String when, Range area) {
    return new Figure(
        id(spot) + "_" + when,
        "Area with mould " + when,
        area,
        Unit.SQUARE_METRE,
        Basis.DECLARED,
        () -> new Working("as seen", List.of(), List.of(), Optional.empty()));
  }
}
