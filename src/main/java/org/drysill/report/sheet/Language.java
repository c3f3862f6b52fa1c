package org.drysill.report.sheet;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A language in which the household sheet is complete. */
public enum Language {
  /** English. */
  ENGLISH("en"),
  /** German. */
  GERMAN("de");

  private final String tag;

  Language(String tag) {
    this.tag = tag;
  }

  /** Its BCP 47 tag, such as {@code de}. */
  public String tag() {
    return tag;
  }

  /** Its locale. */
  public Locale locale() {
    return Locale.forLanguageTag(tag);
  }

  /** The language of a tag; empty where the sheet does not speak it. */
  public static Optional<Language> of(String tag) {
    return Arrays.stream(values()).filter(l -> l.tag.equalsIgnoreCase(tag)).findFirst();
  }
}
