package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** What an instrument measures. */
public enum InstrumentKind implements Worded {
  /** Air temperature and humidity. */
  THERMO_HYGROMETER("thermo-hygrometer", "hygrometer", "thermohygrometer"),
  /** Surface temperature. */
  SURFACE_THERMOMETER(
      "surface thermometer", "infrared thermometer", "contact thermometer", "thermal camera"),
  /** Air flow. */
  FLOW_HOOD("flow hood", "balometer"),
  /** Air speed, and flow by area. */
  ANEMOMETER("anemometer", "vane anemometer"),
  /** Air temperature. */
  THERMOMETER("thermometer", "temperature probe"),
  /** A recorder. */
  LOGGER("logger", "data logger"),
  /** CO₂ in air. */
  CO2_METER("co2 meter", "co2 monitor"),
  /** Something else. */
  OTHER("other");

  private final String word;
  private final List<String> synonyms;

  InstrumentKind(String word, String... synonyms) {
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

  /** The word as it is printed, with the formula of the gas as chemists write it. */
  public String label() {
    return word().replace("co2", "CO₂");
  }
}
