package org.drysill.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.assess.Unit;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in workings keep three digits that count, so that a calculation can be redone. */
class WorkedNumbersTest {
  private static final Numbers NUMBERS = new Numbers(UnitSystem.METRIC, "GBP");

  @ParameterizedTest
  @CsvSource({
    "0.035, PERCENT, 3.5 %",
    "0.85, PERCENT, 85 %",
    "0.006, METRE, 0.006 m",
    "2.4, METRE, 2.40 m",
    "0.27, SQUARE_METRE, 0.27 m²",
    "0.03764, AIRFLOW, 37.6 l/s",
    "0.031, AIRFLOW, 31 l/s",
    "1477.3, PASCAL, '1,477 Pa'",
    "0.0593, ENERGY_PRICE, £0.0593/kWh",
    "0, COUNT, 0",
    "9, COUNT, 9"
  })
  void three_digits_count_and_no_fewer_than_usual(double kept, Unit unit, String printed) {
    assertThat(NUMBERS.worked(Range.exactly(kept), unit).replace('\u00a0', ' ')).isEqualTo(printed);
  }

  @Test
  void bounds_have_the_digits_of_the_likely_value() {
    assertThat(NUMBERS.worked(new Range(0.02024, 0.03764, 0.06539), Unit.AIRFLOW))
        .isEqualTo("37.6\u00a0(20.2–65.4)\u00a0l/s");
    assertThat(NUMBERS.worked(new Range(-1.5, 0, 1.5), Unit.KELVIN))
        .isEqualTo("0.0\u00a0(−1.5\u00a0to\u00a01.5)\u00a0K");
  }

  @Test
  void a_value_near_nought_has_no_more_digits_than_its_uncertainty_bears() {
    assertThat(NUMBERS.worked(new Range(-2.29023, -0.00718, 2.5114), Unit.KELVIN))
        .isEqualTo("−0.01\u00a0(−2.29\u00a0to\u00a02.51)\u00a0K");
    assertThat(NUMBERS.workedPlain(Range.exactly(0.006), Unit.METRE)).isEqualTo("0.006");
  }
}
