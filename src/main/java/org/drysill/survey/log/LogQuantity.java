package org.drysill.survey.log;

import org.drysill.yaml.Worded;

/** What a column of a log may hold, its time aside. */
public enum LogQuantity implements Worded {
  /** Air temperature. */
  TEMPERATURE,
  /** Relative humidity. */
  HUMIDITY,
  /** Carbon dioxide. */
  CO2,
  /** Air of the room beside a heat recovery unit. */
  INDOOR_TEMPERATURE,
  /** Outdoor air beside a heat recovery unit. */
  OUTDOOR_TEMPERATURE,
  /** Air at the grille of a heat recovery unit in the room. */
  SUPPLY_TEMPERATURE,
  /** Air at its grille outdoors. */
  EXHAUST_TEMPERATURE,
  /** Air flow through it. */
  FLOW;

  @Override
  public String word() {
    return this == CO2 ? "CO2" : Worded.super.word();
  }
}
