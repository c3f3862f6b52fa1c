package org.drysill.report.language;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.stream.Stream;

/** The words of a language. Every value that goes into a phrase is a word already. */
public final class Phrases {
  private static final String COMMON = "org.drysill.report.language.common";

  private final Language language;
  private final List<ResourceBundle> bundles;

  private Phrases(Language language, List<ResourceBundle> bundles) {
    this.language = language;
    this.bundles = bundles;
  }

  /**
   * The words of a language; the locale of the machine has no say.
   *
   * @param bundles names of bundles beside the one that all pages share
   */
  public static Phrases of(Language language, String... bundles) {
    return new Phrases(
        language,
        Stream.concat(Stream.of(COMMON), Stream.of(bundles))
            .map(
                name ->
                    ResourceBundle.getBundle(
                        name,
                        language.locale(),
                        ResourceBundle.Control.getNoFallbackControl(
                            ResourceBundle.Control.FORMAT_PROPERTIES)))
            .toList());
  }

  /** Whose words they are. */
  public Language language() {
    return language;
  }

  /**
   * A phrase with its gaps filled.
   *
   * @throws MissingResourceException where no bundle has it
   */
  public String say(String key, String... gaps) {
    return filled(pattern(key), gaps);
  }

  /**
   * The phrase for one, for two where the language has its own, or for many; its first gap is the
   * number, in words as far as the language has them.
   */
  public String count(String key, int number, String... gaps) {
    String[] all = new String[gaps.length + 1];
    all[0] = find("count." + number).orElseGet(() -> Integer.toString(number));
    System.arraycopy(gaps, 0, all, 1, gaps.length);
    if (number == 2) {
      Optional<String> both = find(key + ".two", all);
      if (both.isPresent()) {
        return both.get();
      }
    }
    return say(key + (number == 1 ? ".one" : ".many"), all);
  }

  /** A phrase that not every language needs, such as the name of a measure. */
  public Optional<String> find(String key, String... gaps) {
    return bundles.stream()
        .filter(words -> words.containsKey(key))
        .findFirst()
        .map(words -> filled(words.getString(key), gaps));
  }

  /** A date as the language writes it. */
  public String date(LocalDate date) {
    return DateTimeFormatter.ofPattern(pattern("date"), language.locale()).format(date);
  }

  private String pattern(String key) {
    return bundles.stream()
        .filter(words -> words.containsKey(key))
        .findFirst()
        .map(words -> words.getString(key))
        .orElseThrow(() -> new MissingResourceException(language + " lacks " + key, COMMON, key));
  }

  private String filled(String pattern, String... gaps) {
    return new MessageFormat(pattern, language.locale()).format(gaps);
  }
}
