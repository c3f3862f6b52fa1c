package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** How a landlord classed a hazard, where the law has classes of it. */
public enum HazardClass implements Worded {
  /** To be made safe within a day. */
  EMERGENCY("emergency hazard"),
  /** To be dealt with in days or weeks. */
  SIGNIFICANT("significant hazard");

  private final String synonym;

  HazardClass(String synonym) {
    this.synonym = synonym;
  }

  @Override
  public List<String> synonyms() {
    return List.of(synonym);
  }
}
