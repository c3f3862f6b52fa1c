package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What kind of home it is. */
public enum DwellingType implements Worded {
  /** Stands alone. */
  DETACHED_HOUSE("detached house", "detached"),
  /** Shares one wall. */
  SEMI_DETACHED_HOUSE("semi-detached house", "semi-detached", "semi"),
  /** At the end of a row. */
  END_TERRACE_HOUSE("end-terrace house", "end terrace", "end-terrace", "end terrace house"),
  /** Within a row. */
  MID_TERRACE_HOUSE(
      "mid-terrace house", "mid terrace", "mid-terrace", "mid terrace house", "terraced house"),
  /** One storey. */
  BUNGALOW("bungalow", "detached bungalow", "semi-detached bungalow"),
  /** Flat on the ground. */
  GROUND_FLOOR_FLAT("ground-floor flat", "ground floor flat", "flat (ground floor)", "ground flat"),
  /** Flat between others. */
  MID_FLOOR_FLAT("mid-floor flat", "mid floor flat", "flat (mid floor)", "mid flat", "flat"),
  /** Flat under the roof. */
  TOP_FLOOR_FLAT("top-floor flat", "top floor flat", "flat (top floor)", "top flat"),
  /** Flat on two storeys. */
  MAISONETTE("maisonette"),
  /** One room. */
  STUDIO("studio", "bedsit");

  private final String word;
  private final List<String> synonyms;

  DwellingType(String word, String... synonyms) {
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
