package org.drysill.report.working;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What was said at which number, so that it is said once and pointed to afterwards. */
final class FirstMentions {
  /** A shorter text is said again: pointing to it would be no shorter. */
  private static final int SHORTEST = 24;

  private final String what;
  private final Map<String, String> saidAt = new HashMap<>();

  /**
   * Nothing said yet.
   *
   * @param what what the texts are, such as {@code sources}
   */
  FirstMentions(String what) {
    this.what = what;
  }

  /** The texts that are new at a number, and at the end where the others stand. */
  List<String> at(String number, List<String> texts) {
    List<String> said = new ArrayList<>();
    Set<String> before = new LinkedHashSet<>();
    for (String text : texts) {
      String first = saidAt.putIfAbsent(text, number);
      if (first == null || first.equals(number) || text.length() < SHORTEST) {
        said.add(text);
      } else {
        before.add(first);
      }
    }
    if (!before.isEmpty()) {
      said.add((said.isEmpty() ? "" : "further ") + what + " as at " + String.join(", ", before));
    }
    return said;
  }
}
