package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Months in short words; those that follow each other as a run, over the turn of the year too. */
final class Months {
  private static final int YEAR = 12;

  private Months() {}

  /** Such as {@code Oct–Mar}; months are 1 for January to 12. */
  static String of(BriefDesk desk, List<Integer> numbers) {
    Set<Integer> months = new TreeSet<>(numbers);
    if (months.isEmpty()) {
      return desk.say("months.none");
    }
    if (months.size() == YEAR) {
      return desk.say("months.all");
    }
    List<String> names = List.of(desk.say("months.short").split(", "));
    List<String> runs = new ArrayList<>();
    for (int first : months) {
      if (!months.contains(first == 1 ? YEAR : first - 1)) {
        int last = first;
        while (months.contains(last % YEAR + 1)) {
          last = last % YEAR + 1;
        }
        String from = names.get(first - 1);
        runs.add(first == last ? from : from + "–" + names.get(last - 1));
      }
    }
    return String.join(", ", runs);
  }
}
