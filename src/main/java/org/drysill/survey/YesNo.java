package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** A question that may stay open. */
public enum YesNo implements Worded {
  /** Yes. */
  YES("yes", "true", "y"),
  /** No. */
  NO("no", "false", "n"),
  /** Nobody has looked. */
  UNKNOWN("unknown", "not known", "?");

  private final String word;
  private final List<String> synonyms;

  YesNo(String word, String... synonyms) {
    this.word = word;
    this.synonyms = List.of(synonyms);
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> synonyms() {
    return synonyms;
  }
}
