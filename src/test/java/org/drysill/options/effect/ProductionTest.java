package org.drysill.options.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.Unit;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

class ProductionTest {
  private static final Range LISTED = new Range(4, 8, 16);

  private static Range production(Range listed, Optional<Range> implied) {
    return Production.of(
            new MoistureResult(
                List.of(),
                figure(listed),
                implied.map(ProductionTest::figure),
                MoistureResult.Balance.UNKNOWN,
                null,
                List.of(),
                List.of()))
        .value();
  }

  private static Figure figure(Range value) {
    return HomeFixtures.figure("moisture", value, Unit.MASS_RATE);
  }

  /** Equal spreads weigh alike: √(8 · 18) = 12; half the spread by √2: 12 · 2^(±1/√2). */
  @Test
  void equal_spreads_meet_at_the_geometric_mean() {
    Range both = production(LISTED, Optional.of(new Range(9, 18, 36)));
    assertThat(both.likely()).isCloseTo(12, within(1e-9));
    assertThat(both.high()).isCloseTo(12 * Math.pow(2, 1 / Math.sqrt(2)), within(1e-9));
    assertThat(both.low()).isCloseTo(12 / Math.pow(2, 1 / Math.sqrt(2)), within(1e-9));
  }

  /**
   * ln(high/low): 1.3863 against 2.7726, so weights 4 to 1: ln G = (4 ln 8 + ln 32) / 5 = 2.3567, G
   * = 10.556.
   */
  @Test
  void the_better_known_one_weighs_more() {
    Range both = production(LISTED, Optional.of(new Range(8, 32, 128)));
    assertThat(both.likely()).isCloseTo(10.556, within(0.001));
  }

  @Test
  void the_list_stands_alone_where_readings_cannot_tell() {
    assertThat(production(LISTED, Optional.empty())).isEqualTo(LISTED);
    assertThat(production(LISTED, Optional.of(new Range(0, 18, 36)))).isEqualTo(LISTED);
    assertThat(production(LISTED, Optional.of(Range.exactly(18)))).isEqualTo(LISTED);
  }

  @Test
  void the_readings_stand_alone_where_the_list_names_no_water() {
    assertThat(production(Range.exactly(0), Optional.of(LISTED))).isEqualTo(LISTED);
    assertThat(production(Range.exactly(0), Optional.empty())).isEqualTo(Range.exactly(0));
  }
}
