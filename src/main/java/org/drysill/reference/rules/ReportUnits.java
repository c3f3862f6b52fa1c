package org.drysill.reference.rules;

import java.util.List;
import org.drysill.yaml.Worded;

/** The units that readers of a place are used to. */
public enum ReportUnits implements Worded {
  /** Litres a second, degrees Celsius. */
  METRIC("metric"),
  /** Cubic metres an hour, degrees Celsius. */
  METRIC_HOURLY("metric-hourly"),
  /** Cubic feet a minute, degrees Fahrenheit. */
  INCH_POUND("inch-pound", "ip", "imperial");

  private final String word;
  private final List<String> synonyms;

  ReportUnits(String word, String... synonyms) {
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
