package org.drysill.report.pdf.economy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What most pages begin with, their running head and foot, is told once for all of them. */
final class SharedBeginning {
  /** What is shorter costs as much to point to. */
  private static final int SHORTEST = 100;

  private SharedBeginning() {}

  /** The beginning, in whole lines; empty where pages differ. */
  static String of(List<String> pages) {
    List<String> sorted = new ArrayList<>(pages);
    Collections.sort(sorted);
    String middle = sorted.isEmpty() ? "" : sorted.get(sorted.size() / 2);
    int most = 0;
    String best = "";
    for (int at = middle.indexOf('\n') + 1; at > 0; at = middle.indexOf('\n', at) + 1) {
      String beginning = middle.substring(0, at);
      int saved = (int) (pages.stream().filter(p -> p.startsWith(beginning)).count() - 1) * at;
      if (saved > most) {
        most = saved;
        best = beginning;
      }
    }
    return best.length() < SHORTEST ? "" : best;
  }
}
