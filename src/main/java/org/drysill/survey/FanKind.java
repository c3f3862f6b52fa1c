package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What a ventilation device is. */
public enum FanKind implements Worded {
  /** Takes air out, now and then. */
  INTERMITTENT_EXTRACT("intermittent extract", "extract fan", "intermittent extract fan"),
  /** Takes air out all the time. */
  CONTINUOUS_EXTRACT("continuous extract", "continuous extract fan"),
  /** A cooker hood that blows outside. */
  EXTRACT_HOOD("extract hood", "cooker hood to outside", "hood to outside"),
  /** A cooker hood that blows back into the room. */
  RECIRCULATING_HOOD("recirculating hood", "recirculating cooker hood"),
  /** Blows air into the home. */
  POSITIVE_INPUT("positive input", "positive input ventilation", "piv"),
  /** One fan that turns its direction, with a heat store. */
  ALTERNATING_HEAT_RECOVERY(
      "alternating heat recovery", "push-pull heat recovery", "reversing heat recovery"),
  /** In and out at the same time in one room. */
  SIMULTANEOUS_HEAT_RECOVERY("simultaneous heat recovery", "single-room heat recovery"),
  /** In and out by ducts for the whole home. */
  BALANCED_HEAT_RECOVERY("balanced heat recovery", "mvhr", "whole-house heat recovery"),
  /** A duct to the roof without a fan. */
  PASSIVE_STACK("passive stack", "passive stack ventilator"),
  /** There, but moves no air. */
  FITTED_BUT_NOT_WORKING("fitted but not working", "broken", "isolated", "not working");

  private final String word;
  private final List<String> synonyms;

  FanKind(String word, String... synonyms) {
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
