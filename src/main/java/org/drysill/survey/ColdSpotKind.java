package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What a cold spot is. */
public enum ColdSpotKind implements Worded {
  /** Where two outside walls meet. */
  EXTERNAL_CORNER("external corner", "outside corner", "corner"),
  /** Where wall and cold ceiling meet. */
  CEILING_EDGE("ceiling edge", "wall-ceiling junction", "eaves"),
  /** Where wall and cold floor meet. */
  FLOOR_EDGE("floor edge", "wall-floor junction", "skirting"),
  /** The side of a window opening. */
  WINDOW_REVEAL("window reveal", "reveal"),
  /** Above an opening. */
  LINTEL("lintel"),
  /** Below a window. */
  SILL("sill", "window board"),
  /** A wall with furniture before it. */
  BEHIND_FURNITURE("behind furniture", "behind wardrobe", "inside wardrobe"),
  /** The pipe of a fan through the wall. */
  FAN_SLEEVE("fan sleeve", "sleeve"),
  /** A whole outside wall. */
  WALL("wall", "whole wall"),
  /** A whole ceiling under a cold roof. */
  CEILING("ceiling"),
  /** A whole floor. */
  FLOOR("floor"),
  /** A hatch to a cold loft. */
  LOFT_HATCH("loft hatch"),
  /** Something else. */
  OTHER("other");

  private final String word;
  private final List<String> synonyms;

  ColdSpotKind(String word, String... synonyms) {
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
