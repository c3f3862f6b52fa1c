package org.drysill.assess.cautions;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks for telling words in what a surveyor wrote, and heeds a plain denial before them. */
final class NoteWords {
  private NoteWords() {}

  /** The first of the words that stands in the text without a denial before it. */
  static Optional<String> find(String text, List<String> words, List<String> denials) {
    String lower = text.toLowerCase(Locale.ROOT);
    return words.stream().filter(w -> stands(lower, w, denials)).findFirst();
  }

  private static boolean stands(String text, String word, List<String> denials) {
    Matcher at = Pattern.compile("\\b" + Pattern.quote(word)).matcher(text);
    while (at.find()) {
      String before = text.substring(0, at.start()).strip();
      if (denials.stream().noneMatch(d -> endsWithWord(before, d))) {
        return true;
      }
    }
    return false;
  }

  private static boolean endsWithWord(String text, String word) {
    return text.equals(word) || text.endsWith(" " + word);
  }
}
