package org.drysill.report.working;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.drysill.report.words.Words;

/** What the workings of a family remark: what all of them do is said once, above them. */
final class Notes {
  private static final Pattern BETWEEN_SENTENCES = Pattern.compile("(?<=[.!?]) (?=\\p{Lu})");

  private final List<List<String>> sentences;
  private final List<String> common;

  Notes(List<Family.Member> members) {
    sentences =
        members.stream()
            .map(m -> m.working().note().map(Notes::split).orElse(List.<String>of()))
            .toList();
    common = new ArrayList<>(sentences.get(0));
    sentences.forEach(common::retainAll);
  }

  /** What all of them say; may be empty. */
  String common() {
    return String.join(" ", common);
  }

  /** What one of them says beyond that; may be empty. */
  String own(int member) {
    return String.join(
        " ", sentences.get(member).stream().filter(s -> !common.contains(s)).toList());
  }

  private static List<String> split(String note) {
    return List.of(BETWEEN_SENTENCES.split(Words.sentence(note)));
  }
}
