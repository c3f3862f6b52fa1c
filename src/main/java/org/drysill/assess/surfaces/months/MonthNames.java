package org.drysill.assess.surfaces.months;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Months in sentences. */
public final class MonthNames {
  private static final int YEAR = 12;

  private MonthNames() {}

  /** The name of a month, 1 for January. */
  public static String of(int month) {
    return Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  /**
   * Months in runs across the turn of the year, such as {@code November to February and May}.
   *
   * @param months from 1 for January, ascending, at least one
   */
  public static String of(List<Integer> months) {
    if (months.size() == YEAR) {
      return "every month";
    }
    List<String> runs = new ArrayList<>();
    for (int first : months) {
      if (!months.contains(before(first))) {
        runs.add(run(first, months));
      }
    }
    String last = runs.remove(runs.size() - 1);
    return runs.isEmpty() ? last : String.join(", ", runs) + " and " + last;
  }

  private static String run(int first, List<Integer> months) {
    int last = first;
    while (months.contains(after(last))) {
      last = after(last);
    }
    return last == first ? of(first) : of(first) + " to " + of(last);
  }

  private static int before(int month) {
    return month == 1 ? YEAR : month - 1;
  }

  private static int after(int month) {
    return month == YEAR ? 1 : month + 1;
  }
}
