package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** How a window opens. */
public enum OpeningKind implements Worded {
  /** Hinged at the side. */
  SIDE_HUNG("side-hung", "side hung", "casement"),
  /** Hinged above. */
  TOP_HUNG("top-hung", "top hung"),
  /** Hinged below. */
  BOTTOM_HUNG("bottom-hung", "bottom hung", "tilt"),
  /** Slides. */
  SASH("sash", "sliding", "vertical sliding", "sliding sash"),
  /** Turns about its middle. */
  PIVOT("pivot", "centre pivot", "center pivot"),
  /** A door to outside. */
  DOOR("door", "external door"),
  /** Does not open. */
  FIXED("fixed");

  private final String word;
  private final List<String> synonyms;

  OpeningKind(String word, String... synonyms) {
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
