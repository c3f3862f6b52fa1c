package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What the room side of a surface is. */
public enum SurfaceMaterial implements Worded {
  /** Paint on plaster. */
  PAINTED_PLASTER("painted plaster", "plaster", "plasterboard", "painted plasterboard"),
  /** Paper. */
  WALLPAPER("wallpaper", "paper"),
  /** Wood. */
  TIMBER("timber", "wood"),
  /** Tiles. */
  TILES("tiles", "ceramic tiles", "tile"),
  /** Bare masonry. */
  CONCRETE("concrete", "brick", "masonry"),
  /** Glass. */
  GLASS("glass"),
  /** Metal. */
  METAL("metal"),
  /** Plastic. */
  PLASTIC("plastic", "pvc");

  private final String word;
  private final List<String> synonyms;

  SurfaceMaterial(String word, String... synonyms) {
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
