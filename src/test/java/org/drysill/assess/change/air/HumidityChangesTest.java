package org.drysill.assess.change.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.drysill.assess.humidity.MeasuredAir;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ReadingRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Figures that anyone can redo, of one change of humidity told in several ways. */
class HumidityChangesTest {
  private static AirState state(double celsius, double percent, double outdoorPa) {
    SplitAir air = new SplitAir(celsius, percent / 100, outdoorPa);
    return new AirState(
        Spell.readings(),
        Range.exactly(celsius),
        Range.exactly(air.humidity()),
        Range.exactly(air.excess()),
        Range.exactly(0),
        Range.exactly(5),
        Range.exactly(outdoorPa),
        true);
  }

  @ParameterizedTest(name = "{11}")
  @CsvFileSource(resources = "/reference/humidity_changes.csv", delimiter = ';', numLinesToSkip = 3)
  void a_change_of_humidity_told_as_points_as_share_and_as_excess(
      double celsiusBefore,
      double percentBefore,
      double outdoorBefore,
      double celsiusAfter,
      double percentAfter,
      double outdoorAfter,
      double points,
      double share,
      double excessBefore,
      double excessAfter,
      double excessShare,
      String source,
      String how) {
    assertThat(source).isNotBlank();
    assertThat(how).isIn("derived", "seen", "memory");
    AirChange change =
        new AirComparison(
                "living",
                "living room",
                state(celsiusBefore, percentBefore, outdoorBefore),
                state(celsiusAfter, percentAfter, outdoorAfter),
                ReadingRules.bundled().change())
            .change();
    assertThat(change.humidity().points().likely() * 100).isCloseTo(points, within(0.05));
    assertThat(change.humidity().relative().orElseThrow().likely() * 100)
        .isCloseTo(share, within(0.5));
    assertThat(change.excess().before().likely()).isCloseTo(excessBefore, within(1.0));
    assertThat(change.excess().after().likely()).isCloseTo(excessAfter, within(1.0));
    assertThat(change.excess().relative().orElseThrow().likely() * 100)
        .isCloseTo(excessShare, within(0.5));
  }

  /**
   * Plus or minus 3 points and 0.5 K at 20 °C and 60 %: 1402 Pa, 1291 to 1518 Pa at worst together,
   * 5.9 % as root of the sum of squares, 8.3 % for the difference of two such readings.
   */
  @Test
  void errors_of_two_instruments_of_a_common_kind() {
    MeasuredAir air = new MeasuredAir(Range.around(20, 0.5), Range.around(0.60, 0.03));
    assertThat(air.vapourPressure().likely()).isCloseTo(1402, within(1.0));
    assertThat(air.vapourPressure().low()).isCloseTo(1291, within(1.5));
    assertThat(air.vapourPressure().high()).isCloseTo(1518, within(1.5));
    double error = air.vapourPressureError();
    assertThat(error / 1402 * 100).isCloseTo(5.9, within(0.05));
    assertThat(Math.hypot(error, error) / 1402 * 100).isCloseTo(8.3, within(0.05));
  }
}
