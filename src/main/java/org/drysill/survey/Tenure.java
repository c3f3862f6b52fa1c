package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** Who lives in the home by what right. */
public enum Tenure implements Worded {
  /** By the owner. */
  OWNER_OCCUPIED("owner-occupied", "owner occupied", "owner"),
  /** Rented from a private landlord. */
  PRIVATE_RENTED("private rented", "private-rented", "private rent", "private tenant"),
  /** Rented from a social landlord. */
  SOCIAL_RENTED("social rented", "social-rented", "social rent", "social tenant");

  private final String word;
  private final List<String> synonyms;

  Tenure(String word, String... synonyms) {
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
