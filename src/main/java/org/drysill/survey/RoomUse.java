package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What a room is used for. */
public enum RoomUse implements Worded {
  /** Cooking. */
  KITCHEN("kitchen"),
  /** Cooking and eating. */
  KITCHEN_DINING("kitchen-dining room", "kitchen diner", "kitchen-diner"),
  /** With a bath, with or without shower. */
  BATHROOM("bathroom", "bath"),
  /** With a shower. */
  SHOWER_ROOM("shower room", "shower", "wet room"),
  /** Toilet without bath or shower. */
  WC("wc", "toilet", "sanitary accommodation", "cloakroom"),
  /** Washing clothes. */
  UTILITY("utility", "utility room", "laundry"),
  /** Sleeping. */
  BEDROOM("bedroom"),
  /** Living. */
  LIVING("living", "living room", "lounge", "sitting room"),
  /** Eating. */
  DINING("dining", "dining room"),
  /** Working. */
  STUDY("study", "office"),
  /** Moving about. */
  HALL("hall", "landing", "stairs", "hallway", "corridor"),
  /** Keeping things. */
  STORE("store", "cupboard", "storage"),
  /** Under the roof, not lived in. */
  LOFT("loft", "attic"),
  /** Below ground, not lived in. */
  CELLAR("cellar", "basement");

  private final String word;
  private final List<String> synonyms;

  RoomUse(String word, String... synonyms) {
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
