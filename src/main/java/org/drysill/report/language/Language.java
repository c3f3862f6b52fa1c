package org.drysill.report.language;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.yaml.Worded;

/** A language in which the household sheet and the short report are complete. */
public enum Language implements Worded {
  /** English. */
  ENGLISH("en"),
  /** German. */
  GERMAN("de");

  private final String tag;

  Language(String tag) {
    this.tag = tag;
  }

  @Override
  public String word() {
    return tag;
  }

  /** Its BCP 47 tag, such as {@code de}. */
  public String tag() {
    return tag;
  }

  /** The tags of all of them. */
  public static List<String> tags() {
    return Arrays.stream(values()).map(Language::tag).toList();
  }

  /** Its locale. */
  public Locale locale() {
    return Locale.forLanguageTag(tag);
  }

  /** The language of a tag; empty where nothing is said in it. */
  public static Optional<Language> of(String tag) {
    return Arrays.stream(values()).filter(l -> l.tag.equalsIgnoreCase(tag)).findFirst();
  }
}
