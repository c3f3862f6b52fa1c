package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What covers an end of a duct. */
public enum DuctTerminal implements Worded {
  /** Nothing. */
  NONE("none", "open end"),
  /** A grille or a louvre. */
  WALL_GRILLE("wall grille", "grille", "louvre", "wall louvre"),
  /** A cowl or a tile ventilator on the roof. */
  ROOF_COWL("roof cowl", "cowl", "roof terminal", "tile ventilator"),
  /** Flaps that the air pushes open. */
  GRAVITY_FLAP("gravity flap", "gravity flaps", "backdraught flap");

  private final String word;
  private final List<String> synonyms;

  DuctTerminal(String word, String... synonyms) {
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
