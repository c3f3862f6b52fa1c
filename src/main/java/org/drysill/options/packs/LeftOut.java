package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Measures that are not combined, those of one reason together. */
final class LeftOut {
  private final Map<String, List<String>> titles = new LinkedHashMap<>();

  void add(Member member, String reason) {
    titles.computeIfAbsent(reason, r -> new ArrayList<>()).add(member.candidate().title());
  }

  /** Each reason once, after the measures that it holds for. */
  List<String> sentences() {
    return titles.entrySet().stream()
        .map(e -> String.join("; ", e.getValue()) + ": " + e.getKey() + ".")
        .toList();
  }
}
