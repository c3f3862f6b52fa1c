package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What a duct is made of. */
public enum DuctMaterial implements Worded {
  /** Smooth plastic. */
  SMOOTH_PLASTIC("smooth plastic", "plastic", "plastic sleeve", "pvc", "rigid plastic"),
  /** A metal pipe through the wall. */
  METAL_SLEEVE("metal sleeve", "aluminium sleeve", "steel sleeve"),
  /** Sheet steel. */
  GALVANISED_STEEL("galvanised steel", "spiral duct", "steel", "rigid metal"),
  /** Flexible duct pulled taut. */
  FLEXIBLE_TAUT("taut flexible", "flexible taut", "flexible (taut)"),
  /** Flexible duct left slack. */
  FLEXIBLE_SLACK("slack flexible", "flexible", "flexible slack", "flexible (slack)");

  private final String word;
  private final List<String> synonyms;

  DuctMaterial(String word, String... synonyms) {
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
