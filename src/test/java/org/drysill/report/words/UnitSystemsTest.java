package org.drysill.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.assess.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One value in the units of three kinds of readers; no-break spaces are written as spaces. */
class UnitSystemsTest {
  // 15 l/s = 54 m³/h = 31.78 cfm (foot 0.3048 m); 20 °C = 68 °F; 0.5 W/(l/s) = 0.139 W/(m³/h).
  @ParameterizedTest
  @CsvSource({
    "AIRFLOW, 0.015, 15 l/s, 54 m³/h, 32 cfm",
    "CELSIUS, 20, 20.0 °C, 20.0 °C, 68 °F",
    "SPECIFIC_FAN_POWER, 500, 0.50 W/(l/s), 0.14 W/(m³/h), 0.24 W/cfm",
    "SQUARE_METRE, 84, 84 m², 84 m², 904 ft²"
  })
  void one_value(Unit unit, double kept, String metric, String hourly, String customary) {
    assertThat(printed(UnitSystem.METRIC, kept, unit)).isEqualTo(metric);
    assertThat(printed(UnitSystem.METRIC_HOURLY, kept, unit)).isEqualTo(hourly);
    assertThat(printed(UnitSystem.CUSTOMARY, kept, unit)).isEqualTo(customary);
  }

  private static String printed(UnitSystem system, double kept, Unit unit) {
    return new Numbers(system, "GBP").one(kept, unit).replace(Numbers.JOIN, " ");
  }
}
