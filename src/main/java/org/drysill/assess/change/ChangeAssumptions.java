package org.drysill.assess.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.change.place.ColdSpotChange;
import org.drysill.assess.change.place.MouldChange;
import org.drysill.assess.change.visit.VisitFacts;
import org.drysill.reference.readings.ChangeRules;

/** What a comparison takes for granted. */
final class ChangeAssumptions {
  private final ChangeRules rules;

  ChangeAssumptions(ChangeRules rules) {
    this.rules = rules;
  }

  List<Assumption> of(VisitFacts before, List<ColdSpotChange> places, Optional<MouldChange> mould) {
    List<Assumption> all = new ArrayList<>();
    all.add(weather());
    if (places.stream().anyMatch(p -> p.sameAir().isPresent())) {
      all.add(sameAir());
    }
    mould.ifPresent(m -> all.add(mouldArea()));
    before.humidity().assumptions().forEach(a -> all.add(ofEarlierVisit(a)));
    return all;
  }

  private Assumption weather() {
    return new Assumption(
        "change.weather",
        "Weather that counts as alike",
        String.format(
            Locale.ROOT,
            "outdoor temperatures within %.0f K and outdoor vapour within %.0f Pa of each other,"
                + " at most %.0f °C",
            rules.alikeWithin().value(),
            rules.vapourWithin().value(),
            rules.warmestOutdoors().value()),
        "no document that the program knows draws this line",
        "Choose visits in weather that is closer.",
        rules.source());
  }

  private Assumption sameAir() {
    return new Assumption(
        "change.same_air",
        "Outdoor air at which cold places of both visits are compared",
        String.format(
            Locale.ROOT,
            "%.0f °C and %.0f %%",
            rules.referenceAir().temperature().value(),
            rules.referenceAir().humidity().value() * 100),
        "places can be compared only in the same air",
        "The readings of each visit stand beside it.",
        rules.referenceAir().source());
  }

  private Assumption mouldArea() {
    return new Assumption(
        "change.mould_area",
        "Error of areas with mould",
        String.format(
            Locale.ROOT, "plus or minus %.0f %% of the area", rules.mouldAreaError().value() * 100),
        "areas are estimated by eye, and the survey states no bounds",
        "State the area with its bounds, or photograph it with a scale.",
        rules.mouldSource());
  }

  private static Assumption ofEarlierVisit(Assumption of) {
    return new Assumption(
        "change.before." + of.id(),
        of.about() + ", earlier visit",
        of.assumed(),
        of.why(),
        of.better(),
        of.source());
  }
}
