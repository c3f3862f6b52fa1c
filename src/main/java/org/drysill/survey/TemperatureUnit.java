package org.drysill.survey;

import org.drysill.yaml.Worded;

/** The unit of a column of temperatures. */
public enum TemperatureUnit implements Worded {
  /** Degrees Celsius. */
  CELSIUS("C"),
  /** Degrees Fahrenheit. */
  FAHRENHEIT("F");

  private final String word;

  TemperatureUnit(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** The temperature [°C] of a number in this unit. */
  public double celsius(double number) {
    return this == CELSIUS ? number : (number - 32) / 1.8;
  }
}
