package org.drysill.report.working;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.drysill.report.words.Words;

/**
 * What the workings of a family remark: what all of them do is said once, above them. Where each
 * quotes the survey, the quotation stands alone.
 */
final class Notes {
  private static final Pattern BETWEEN_SENTENCES = Pattern.compile("(?<=[.!?]) (?=\\p{Lu})");

  private static final String QUOTES = "The survey says: ";

  private final List<List<String>> sentences;
  private final List<String> common;
  private final boolean quoted;

  Notes(List<Family.Member> members) {
    sentences =
        members.stream()
            .map(m -> m.working().note().map(Notes::split).orElse(List.<String>of()))
            .toList();
    common = new ArrayList<>(sentences.get(0));
    sentences.forEach(common::retainAll);
    quoted =
        members.size() > 1
            && sentences.stream().allMatch(s -> s.size() == 1 && s.get(0).startsWith(QUOTES));
  }

  /** What all of them say, sentence by sentence; may be empty. */
  List<String> common() {
    return quoted ? List.of("In quotation marks what the survey says.") : List.copyOf(common);
  }

  /** What one of them says beyond that; may be empty. */
  String own(int member) {
    if (quoted) {
      String said = sentences.get(member).get(0);
      return "“" + said.substring(QUOTES.length(), said.length() - 1) + "”";
    }
    return String.join(
        " ", sentences.get(member).stream().filter(s -> !common.contains(s)).toList());
  }

  private static List<String> split(String note) {
    return List.of(BETWEEN_SENTENCES.split(Words.sentence(note)));
  }
}
