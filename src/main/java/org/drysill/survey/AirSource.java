package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** From where a unit that blows air in takes it. */
public enum AirSource implements Worded {
  /** The loft. */
  LOFT("loft", "roof space", "attic"),
  /** Outdoors, through a wall. */
  OUTSIDE_WALL("outside wall", "outdoors", "outside"),
  /** A room of the home. */
  ROOM("room", "indoors");

  private final String word;
  private final List<String> synonyms;

  AirSource(String word, String... synonyms) {
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
