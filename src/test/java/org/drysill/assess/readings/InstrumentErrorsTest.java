package org.drysill.assess.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.readings.Accuracy;
import org.drysill.survey.Instrument;
import org.drysill.survey.InstrumentKind;
import org.drysill.yaml.Quantity;
import org.junit.jupiter.api.Test;

class InstrumentErrorsTest {
  private static final Citation SOURCE =
      new Citation("A guess", Optional.empty(), Optional.empty(), How.ASSUMPTION);
  private static final Optional<String> STATED = Optional.of("th");

  /** States temperature 0.4 K, humidity 3 points, flow 5 %, nothing of CO₂. */
  private static final Instrument THERMO_HYGROMETER =
      new Instrument(
          "th",
          InstrumentKind.THERMO_HYGROMETER,
          Optional.empty(),
          Optional.of(exactly(0.4)),
          Optional.of(exactly(0.03)),
          Optional.of(exactly(0.05)),
          Optional.empty());

  private final InstrumentErrors errors =
      new InstrumentErrors(
          List.of(THERMO_HYGROMETER),
          new Accuracy(exactly(1), exactly(0.1), exactly(80), exactly(2), exactly(0.2), SOURCE));

  private static Quantity exactly(double value) {
    return new Quantity(value, value, value, "%s as written".formatted(value));
  }

  @Test
  void what_is_written_beside_the_reading_counts_first() {
    Quantity read = new Quantity(20, 19.8, 20.2, "20 ± 0.2");
    assertThat(errors.temperature(read, Optional.empty())).isEqualTo(new Range(19.8, 20, 20.2));
    assertThat(errors.assumptions()).isEmpty();
  }

  @Test
  void then_the_accuracy_of_the_instrument() {
    assertThat(errors.temperature(exactly(20), STATED)).isEqualTo(Range.around(20, 0.4));
    assertThat(errors.surface(exactly(12), STATED)).isEqualTo(Range.around(12, 0.4));
    assertThat(errors.humidity(exactly(0.5), STATED)).isEqualTo(Range.around(0.5, 0.03));
    assertThat(errors.assumptions()).isEmpty();
  }

  @Test
  void then_an_assumption_that_is_noted() {
    assertThat(errors.temperature(exactly(20), Optional.of("lost"))).isEqualTo(Range.around(20, 1));
    assertThat(errors.surface(exactly(12), Optional.empty())).isEqualTo(Range.around(12, 2));
    assertThat(errors.co2(exactly(900), STATED)).isEqualTo(Range.around(900, 80));
    assertThat(errors.assumptions())
        .extracting(Assumption::id)
        .containsExactly(
            "instrument.lost.temperature_accuracy",
            "instrument.unnamed.surface_temperature_accuracy",
            "instrument.th.CO2_accuracy");
    assertThat(errors.assumptions().get(0).assumed()).isEqualTo("plus or minus 1.0 as written");
    assertThat(errors.assumptions()).extracting(Assumption::source).containsOnly(SOURCE);
  }

  @Test
  void an_assumption_is_noted_once() {
    errors.temperature(exactly(20), Optional.empty());
    errors.temperature(exactly(21), Optional.empty());
    assertThat(errors.assumptions()).hasSize(1);
  }

  @Test
  void humidity_stays_between_dry_and_saturated() {
    assertThat(errors.humidity(exactly(0.99), STATED).high()).isEqualTo(1);
    assertThat(errors.humidity(exactly(0.01), STATED).low()).isEqualTo(0);
  }

  @Test
  void flow_errors_are_shares_of_the_reading() {
    assertThat(errors.flow(exactly(0.01), STATED).high()).isCloseTo(0.0105, within(1e-12));
    assertThat(errors.flow(exactly(0.01), Optional.empty()).low()).isCloseTo(0.008, within(1e-12));
  }
}
