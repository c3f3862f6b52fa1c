package org.drysill.assess.humidity;

import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.reference.readings.ReadingRules;

/**
 * Visits with readings. Instrument th1 states ±0.4 K and ±2.5 points. The climate is 5 °C and 85 %
 * in every month.
 */
final class HumidityFixtures {
  static final ReadingRules RULES = ReadingRules.bundled();

  private HumidityFixtures() {}

  /**
   * The home of a visit on 22 January 2026.
   *
   * @param outdoor outdoor readings, comma-separated in flow style; may be empty
   * @param rooms the rooms as YAML list entries
   */
  static Home home(String outdoor, String rooms) {
    String text =
        """
        drysill: 1
        visit:
          date: 2026-01-22
          instruments:
            - {id: th1, kind: thermo-hygrometer, temperature_accuracy: 0.4 K, humidity_accuracy: 2.5 %}
        dwelling: {jurisdiction: england, floor_area: 84 m2}
        outdoor_readings: [OUTDOOR]
        rooms:
        """
            .replace("OUTDOOR", outdoor);
    return HomeFixtures.of(HomeFixtures.read(text + rooms.stripIndent().strip().indent(2)));
  }

  static HumidityResult assess(String outdoor, String rooms) {
    return HumidityAssessor.assess(home(outdoor, rooms), RULES);
  }

  /** A reading of th1 as a list entry; {@code at} is a time of the day of the visit. */
  static String reading(String at, double celsius, double percent) {
    return "{at: 2026-01-22T%s, temperature: %s C, humidity: %s %%, instrument: th1}"
        .formatted(at, celsius, percent);
  }
}
