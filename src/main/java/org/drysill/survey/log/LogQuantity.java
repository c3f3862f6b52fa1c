package org.drysill.survey.log;

import org.drysill.yaml.Worded;

/** What a column of a log may hold, its time aside. */
public enum LogQuantity implements Worded {
  /** Air temperature. */
  TEMPERATURE,
  /** Relative humidity. */
  HUMIDITY,
  /** Carbon dioxide. */
  CO2;

  @Override
  public String word() {
    return this == CO2 ? "CO2" : Worded.super.word();
  }
}
