package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What a window frame is made of. */
public enum Frame implements Worded {
  /** Wood. */
  TIMBER("timber", "wood", "softwood", "hardwood"),
  /** Plastic. */
  PVC("pvc", "upvc", "plastic"),
  /** Metal without thermal break. */
  METAL("metal", "steel", "aluminium", "aluminum", "aluminium without thermal break"),
  /** Metal with a break. */
  METAL_WITH_THERMAL_BREAK("metal with thermal break", "aluminium with thermal break");

  private final String word;
  private final List<String> synonyms;

  Frame(String word, String... synonyms) {
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
