package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** Where a window looks. */
public enum Orientation implements Worded {
  /** North. */
  N("N", "north"),
  /** North-east. */
  NE("NE", "north-east"),
  /** East. */
  E("E", "east"),
  /** South-east. */
  SE("SE", "south-east"),
  /** South. */
  S("S", "south"),
  /** South-west. */
  SW("SW", "south-west"),
  /** West. */
  W("W", "west"),
  /** North-west. */
  NW("NW", "north-west");

  private final String word;
  private final List<String> synonyms;

  Orientation(String word, String... synonyms) {
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
