package org.drysill.report.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;

/** Months that follow each other, over the turn of the year too. */
final class MonthRuns {
  private MonthRuns() {}

  static String of(List<Integer> numbers, IntFunction<String> name) {
    Set<Integer> months = new TreeSet<>(numbers);
    if (months.size() == 12) {
      return "all year";
    }
    List<String> runs = new ArrayList<>();
    for (int first : months) {
      if (!months.contains(before(first))) {
        runs.add(run(first, months, name));
      }
    }
    return Words.list(runs);
  }

  private static String run(int first, Set<Integer> months, IntFunction<String> name) {
    int last = first;
    int length = 1;
    while (months.contains(after(last))) {
      last = after(last);
      length++;
    }
    String from = name.apply(first);
    return switch (length) {
      case 1 -> from;
      case 2 -> from + " and " + name.apply(last);
      default -> from + " to " + name.apply(last);
    };
  }

  private static int before(int month) {
    return month == 1 ? 12 : month - 1;
  }

  private static int after(int month) {
    return month == 12 ? 1 : month + 1;
  }
}
