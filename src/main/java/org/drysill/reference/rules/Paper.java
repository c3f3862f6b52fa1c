package org.drysill.reference.rules;

import java.util.List;
import org.drysill.yaml.Worded;

/** The paper that a report is printed on. */
public enum Paper implements Worded {
  /** 210 by 297 mm. */
  A4("A4", "a4"),
  /** 8.5 by 11 inches. */
  LETTER("Letter", "letter");

  private final String word;
  private final List<String> synonyms;

  Paper(String word, String... synonyms) {
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
