package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** When a fan runs. */
public enum RunMode implements Worded {
  /** All the time. */
  CONTINUOUS("continuous", "always"),
  /** When the air is moist. */
  HUMIDITY_CONTROLLED("humidity-controlled", "humidity controlled", "humidistat"),
  /** With the light. */
  WITH_LIGHT("with light", "light switch"),
  /** When someone switches it. */
  MANUAL("manual", "by hand", "switch"),
  /** For the hours given. */
  HOURS_PER_DAY("hours per day", "timer");

  private final String word;
  private final List<String> synonyms;

  RunMode(String word, String... synonyms) {
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
