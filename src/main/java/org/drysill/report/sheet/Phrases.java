package org.drysill.report.sheet;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.ResourceBundle;

/** The words of a language. Every value that goes into a phrase is a word already. */
final class Phrases {
  private static final String BUNDLE = "org.drysill.report.sheet.words";

  private final Language language;
  private final ResourceBundle words;

  private Phrases(Language language, ResourceBundle words) {
    this.language = language;
    this.words = words;
  }

  /** The words of a language; the locale of the machine has no say. */
  static Phrases of(Language language) {
    return new Phrases(
        language,
        ResourceBundle.getBundle(
            BUNDLE,
            language.locale(),
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
  }

  Language language() {
    return language;
  }

  /** A phrase with its gaps filled. */
  String say(String key, String... gaps) {
    return filled(words.getString(key), gaps);
  }

  /** The phrase for one or for many; its first gap is the number. */
  String count(String key, int number, String... gaps) {
    String[] all = new String[gaps.length + 1];
    all[0] = Integer.toString(number);
    System.arraycopy(gaps, 0, all, 1, gaps.length);
    return say(key + (number == 1 ? ".one" : ".many"), all);
  }

  /** A phrase that not every language needs, such as the name of a measure. */
  Optional<String> find(String key) {
    return words.containsKey(key) ? Optional.of(filled(words.getString(key))) : Optional.empty();
  }

  /** A date as the language writes it. */
  String date(LocalDate date) {
    return DateTimeFormatter.ofPattern(words.getString("date"), language.locale()).format(date);
  }

  private String filled(String pattern, String... gaps) {
    return new MessageFormat(pattern, language.locale()).format(gaps);
  }
}
