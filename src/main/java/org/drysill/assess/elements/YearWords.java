package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drysill.assess.surfaces.months.MonthNames;
import org.drysill.physics.layers.Iso13788Element.Verdict;

/** What a year does to a wall, in words without numbers. */
final class YearWords {
  private YearWords() {}

  /** The reason of the finding about accumulation. */
  static String because(WallYear year) {
    return switch (year.worst()) {
      case NONE -> "No water settles in any month, even at the unfavourable ends of all ranges.";
      case DRIES -> dries(year);
      case ACCUMULATES -> accumulates(year);
    };
  }

  private static String dries(WallYear year) {
    return year.likely() == Verdict.NONE
        ? "Likely no water settles. At the unfavourable ends of all ranges it settles %s and dries within the year."
            .formatted(where(year))
        : "Water settles %s (%s) and has dried by %s. It dries at the unfavourable ends of all ranges too."
            .formatted(where(year), MonthNames.of(wetting(year)), MonthNames.of(dryFrom(year)));
  }

  private static String accumulates(WallYear year) {
    String where = where(year);
    return switch (year.likely()) {
      case NONE ->
          "Likely no water settles, but at the unfavourable ends of all ranges it stays %s from year to year."
              .formatted(where);
      case DRIES ->
          "Likely the water that settles %s (%s) has dried by %s, but at the unfavourable ends of all ranges it stays from year to year."
              .formatted(where, MonthNames.of(wetting(year)), MonthNames.of(dryFrom(year)));
      case ACCUMULATES ->
          year.best() == Verdict.ACCUMULATES
              ? "Water stays %s from year to year, even at the favourable ends of all ranges."
                  .formatted(where)
              : "Water likely stays %s from year to year, but not at the favourable ends of all ranges."
                  .formatted(where);
    };
  }

  /** The places at which water settles. */
  static String where(WallYear year) {
    return year.wet().stream().map(WetPlace::where).collect(Collectors.joining(" and "));
  }

  /** The months in which water settles at the likely values, 1 for January, ascending. */
  static List<Integer> wetting(WallYear year) {
    return year.months().stream()
        .filter(m -> m.settledKgM2() > 0)
        .map(WaterMonth::month)
        .sorted()
        .toList();
  }

  /** The first month at whose end the wall is dry again, for one that gets wet and dries. */
  static int dryFrom(WallYear year) {
    List<WaterMonth> months = new ArrayList<>(year.months());
    int last = months.size() - 1;
    while (months.get(last).storedKgM2().likely() == 0 && months.get(last).driedKgM2() == 0) {
      last--;
    }
    return months.get(last).month();
  }
}
