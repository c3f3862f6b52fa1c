package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** How a duct bends. */
public enum BendKind implements Worded {
  /** In a curve as wide as the duct, or wider. */
  SWEPT("swept", "smooth", "long radius"),
  /** At a corner. */
  SHARP("sharp", "mitred", "square");

  private final String word;
  private final List<String> synonyms;

  BendKind(String word, String... synonyms) {
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
