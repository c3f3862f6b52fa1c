package org.drysill.report.table;

import java.util.List;

/**
 * Short labels for rows: what all names of a table share at their ends is left to its title.
 *
 * <p>"Kitchen extract" and "Bathroom extract" become "Kitchen" and "Bathroom".
 */
public final class Labels {
  private static final String SEPARATOR = " ";

  private Labels() {}

  /** The names without the words that all of them end with; unchanged where that leaves nothing. */
  public static List<String> of(List<String> names) {
    if (names.size() < 2) {
      return names;
    }
    List<List<String>> words = names.stream().map(n -> List.of(n.split(SEPARATOR))).toList();
    int shared = 0;
    while (sharedAt(words, shared)) {
      shared++;
    }
    int drop = shared;
    return words.stream().map(w -> label(w.subList(0, w.size() - drop))).toList();
  }

  /** Whether every name has a word before this one from its end, and the same one at it. */
  private static boolean sharedAt(List<List<String>> names, int fromEnd) {
    return names.stream().allMatch(w -> w.size() > fromEnd + 1)
        && names.stream().map(w -> w.get(w.size() - 1 - fromEnd)).distinct().count() == 1;
  }

  private static String label(List<String> words) {
    String text = String.join(SEPARATOR, words);
    boolean open = text.endsWith(":") || text.endsWith(",");
    return open ? text.substring(0, text.length() - 1) : text;
  }
}
