package org.drysill.assess.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.survey.Instrument;
import org.drysill.survey.InstrumentKind;
import org.drysill.yaml.Quantity;
import org.junit.jupiter.api.Test;

class InstrumentErrorsTest {
  private final InstrumentErrors errors =
      new InstrumentErrors(
          List.of(
              new Instrument(
                  "th",
                  InstrumentKind.THERMO_HYGROMETER,
                  Optional.empty(),
                  Optional.of(exactly(0.4)),
                  Optional.of(exactly(0.03)),
                  Optional.of(exactly(0.05)),
                  Optional.empty())));

  private static Quantity exactly(double value) {
    return new Quantity(value, value, value, "");
  }

  @Test
  void what_is_written_beside_the_reading_counts_first() {
    Quantity read = new Quantity(20, 19.8, 20.2, "20 ± 0.2");
    assertThat(errors.temperature(read, Optional.of("th"), 1)).isEqualTo(new Range(19.8, 20, 20.2));
  }

  @Test
  void then_the_instrument_then_the_assumption() {
    assertThat(errors.temperature(exactly(20), Optional.of("th"), 1))
        .isEqualTo(Range.around(20, 0.4));
    assertThat(errors.temperature(exactly(20), Optional.of("lost"), 1))
        .isEqualTo(Range.around(20, 1));
    assertThat(errors.temperature(exactly(20), Optional.empty(), 1)).isEqualTo(Range.around(20, 1));
  }

  @Test
  void humidity_stays_between_dry_and_saturated() {
    assertThat(errors.humidity(exactly(0.99), Optional.of("th"), 0.1).high()).isEqualTo(1);
    assertThat(errors.humidity(exactly(0.01), Optional.of("th"), 0.1).low()).isEqualTo(0);
  }

  @Test
  void flow_errors_are_shares_of_the_reading() {
    assertThat(errors.flow(exactly(0.01), Optional.of("th"), 0.1).high())
        .isCloseTo(0.0105, within(1e-12));
    assertThat(errors.flow(exactly(0.01), Optional.empty(), 0.1).high())
        .isCloseTo(0.011, within(1e-12));
  }
}
