package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.surfaces.months.Criterion;
import org.drysill.assess.surfaces.months.MonthNames;
import org.drysill.assess.surfaces.months.MonthTable;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.reference.surfaces.SurfaceCatalogue;

/** What the year of a place means, in plain sentences. */
final class PlaceWords {
  private PlaceWords() {}

  /** The verdict. */
  static String verdict(MonthTable months, Criterion criterion) {
    List<Integer> likely = months.monthsAtRisk();
    List<Integer> possible = months.monthsPossiblyAtRisk();
    if (!likely.isEmpty()) {
      return risk(months.gravest(), criterion, likely);
    }
    return possible.isEmpty()
        ? "It stays below its limit all year."
        : "It probably stays below its limit; in the least favourable case not, in %s."
            .formatted(MonthNames.of(possible));
  }

  private static String risk(Risk gravest, Criterion criterion, List<Integer> months) {
    String when = MonthNames.of(months);
    return switch (gravest) {
      case MOULD -> "Mould finds enough moisture on it in %s.".formatted(when);
      case CONDENSATION, NONE ->
          criterion.coldNights()
              ? "Water forms on it on cold nights in %s.".formatted(when)
              : "It is wet or moist enough for mould in %s.".formatted(when);
    };
  }

  /** A sentence where a pane cannot stay dry at a humidity that people live in. */
  static Optional<String> neverDry(
      String glass, MonthTable months, Criterion criterion, SurfaceCatalogue surfaces) {
    double livable = surfaces.livableHumidity().likely();
    if (!criterion.coldNights() || months.lowestDryHumidity().value().high() >= livable) {
      return Optional.empty();
    }
    return Optional.of(
        "%s can never stay dry at a humidity that people live in: on a cold night it would need less than %s indoors, and a lived-in home seldom stays below %s."
            .formatted(
                Words.capital(glass),
                Words.percent(months.lowestDryHumidity().likely()),
                Words.percent(livable)));
  }
}
