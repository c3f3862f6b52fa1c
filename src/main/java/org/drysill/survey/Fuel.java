package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What a heater or cooker burns. */
public enum Fuel implements Worded {
  /** Natural gas. */
  MAINS_GAS("mains gas", "gas", "natural gas"),
  /** Liquefied gas. */
  LPG("lpg", "propane", "bottled gas", "butane"),
  /** Oil. */
  OIL("oil", "heating oil"),
  /** Paraffin. */
  PARAFFIN("paraffin", "kerosene"),
  /** Wood or coal. */
  SOLID_FUEL("solid fuel", "wood", "coal", "logs"),
  /** Electric, direct. */
  ELECTRICITY("electricity", "electric", "direct electric"),
  /** Electric, by heat pump. */
  HEAT_PUMP("heat pump"),
  /** From a network. */
  DISTRICT_HEAT("district heat", "communal");

  private final String word;
  private final List<String> synonyms;

  Fuel(String word, String... synonyms) {
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
