package org.drysill.assess.ventilation.provided;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.physics.Range;
import org.drysill.reference.ventilation.LeakageMethod;
import org.drysill.reference.ventilation.WindShelter;
import org.drysill.survey.Shelter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Divisors by the published methods: Sherman 1987 (memory), Kronvall and Persily (memory), the
 * Finnish decree section 17 (seen), EN ISO 13789 Table C.4 (memory).
 */
class InfiltrationTest {
  private static Infiltration of(int storeys, Shelter shelter) {
    return new Infiltration(
        VentilationFixtures.DEFAULTS,
        storeys,
        Infiltration.wind(Optional.of(shelter)),
        Optional.empty());
  }

  private static Range divisor(Infiltration infiltration, String id) {
    LeakageMethod method =
        VentilationFixtures.DEFAULTS.leakage().stream()
            .filter(m -> m.id().equals(id))
            .findFirst()
            .orElseThrow();
    return infiltration.divisor(method);
  }

  @ParameterizedTest
  @CsvSource({
    "sherman, 1, NORMAL, 20",
    "sherman, 2, NORMAL, 16",
    "sherman, 3, NORMAL, 14",
    "sherman, 7, NORMAL, 14",
    "sherman, 1, EXPOSED, 18",
    "sherman, 1, SHELTERED, 24",
    "kronvall-persily, 3, EXPOSED, 20",
    "finland, 1, NORMAL, 35",
    "finland, 2, NORMAL, 24",
    "finland, 4, NORMAL, 20",
    "finland, 9, NORMAL, 15",
    "iso-13789, 2, EXPOSED, 10",
    "iso-13789, 2, NORMAL, 14.2857142857",
    "iso-13789, 2, SHELTERED, 25"
  })
  void each_method_divides_as_published(String id, int storeys, Shelter shelter, double expected) {
    assertThat(divisor(of(storeys, shelter), id).likely()).isCloseTo(expected, within(1e-9));
  }

  /** Two storeys: Sherman 14..26 by 0.8, 20, 24, 14.3: from 11.2 to 24, likely 16. */
  @Test
  void the_range_spans_every_method_and_the_likely_value_is_by_one() {
    Range divisor = of(2, Shelter.NORMAL).divisor();
    assertThat(divisor.low()).isCloseTo(11.2, within(1e-9));
    assertThat(divisor.likely()).isCloseTo(16, within(1e-9));
    assertThat(divisor.high()).isCloseTo(24, within(1e-9));
    Range airChange = of(2, Shelter.NORMAL).airChangePerHour(new Range(6, 8, 12));
    assertThat(airChange.low()).isCloseTo(6 / 24.0, within(1e-9));
    assertThat(airChange.likely()).isCloseTo(0.5, within(1e-9));
    assertThat(airChange.high()).isCloseTo(12 / 11.2, within(1e-9));
  }

  @Test
  void a_home_of_unknown_shelter_is_taken_as_normal() {
    assertThat(Infiltration.wind(Optional.empty())).isEqualTo(WindShelter.NORMAL);
  }

  @ParameterizedTest
  @CsvSource({"9, 9, 24", "15, 11.2, 24", "30, 11.2, 30"})
  void warmth_and_wind_widen_the_range_where_they_lie_outside_it(
      double weather, double low, double high) {
    Range divisor =
        new Infiltration(VentilationFixtures.DEFAULTS, 2, WindShelter.NORMAL, Optional.of(weather))
            .divisor();
    assertThat(divisor.low()).isCloseTo(low, within(1e-9));
    assertThat(divisor.likely()).isCloseTo(16, within(1e-9));
    assertThat(divisor.high()).isCloseTo(high, within(1e-9));
  }
}
