package org.drysill.physics.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The table against its formula, inside, at its ends and beyond. */
class SaturationTableTest {
  @Test
  void is_off_by_no_more_than_it_says() {
    for (double celsius = -70; celsius < 80; celsius += 0.0137) {
      assertThat(SaturationTable.pressurePa(celsius))
          .isCloseTo(
              Iso13788Vapour.saturationPressurePa(celsius), within(SaturationTable.ERROR_PA));
    }
  }

  @Test
  void meets_its_formula_where_cells_meet() {
    for (int eighth = -60 * 8; eighth <= 70 * 8; eighth++) {
      double celsius = eighth / 8.0;
      double formula = Iso13788Vapour.saturationPressurePa(celsius);
      assertThat(SaturationTable.pressurePa(celsius)).isEqualTo(formula);
      assertThat(SaturationTable.pressurePa(Math.nextDown(celsius)))
          .isCloseTo(formula, within(1e-8));
    }
  }
}
