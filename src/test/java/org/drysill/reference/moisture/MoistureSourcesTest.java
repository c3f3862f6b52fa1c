package org.drysill.reference.moisture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.drysill.yaml.Quantity;
import org.junit.jupiter.api.Test;

class MoistureSourcesTest {
  private final MoistureSources table = MoistureSources.bundled();

  /** BS 5250:2002 Table B.1 (memory; "wet, one occupant, 9" seen in an article that quotes it). */
  @Test
  void daily_totals_are_those_of_bs_5250() {
    assertThat(totals("dry")).containsExactly(3.5, 4.0, 4.0, 5.0, 6.0, 7.0);
    assertThat(totals("moist")).containsExactly(6.0, 8.0, 9.0, 10.0, 11.0, 12.0);
    assertThat(totals("wet")).containsExactly(9.0, 11.0, 12.0, 14.0, 15.0, 16.0);
  }

  @Test
  void every_kind_but_leaks_and_others_has_a_rate_whose_bounds_enclose_it_and_a_usual_number() {
    for (SourceKind kind : table.sources()) {
      boolean other = List.of("leak", "other").contains(kind.kind());
      assertThat(kind.rates().isEmpty()).as(kind.kind()).isEqualTo(other);
      assertThat(kind.usual().isEmpty()).as(kind.kind()).isEqualTo(other);
      for (SourceRate rate : kind.rates()) {
        assertThat(rate.amount().low()).as(kind.kind()).isPositive();
      }
    }
  }

  @Test
  void kinds_that_cover_another_are_kinds_themselves() {
    assertThat(table.sources())
        .flatExtracting(SourceKind::coveredBy)
        .allSatisfy(word -> assertThat(table.kinds()).contains(word));
  }

  @Test
  void the_disagreement_about_showers_is_told() {
    assertThat(table.find("shower").orElseThrow().conflict().orElseThrow())
        .contains("0.2 kg to 2.6 kg");
  }

  /** BS 5250:2002 (memory): 40 g/h asleep, 55 g/h active. */
  @Test
  void people_give_off_what_bs_5250_says() {
    assertThat(table.people().asleep().likely()).isEqualTo(0.040);
    assertThat(table.people().awake().likely()).isEqualTo(0.055);
  }

  /**
   * Water of combustion by kilowatt-hour: stoichiometry gives 0.146 kg gross and 0.162 net for
   * natural gas, 0.117 gross and 0.127 net for propane, 0.113 for butane.
   */
  @Test
  void unflued_heaters_agree_with_the_chemistry_of_combustion() {
    SourceKind heater = table.find("unflued heater").orElseThrow();
    assertThat(heater.rates().get(0).amount().low()).isEqualTo(0.146);
    assertThat(heater.rates().get(0).amount().high()).isEqualTo(0.162);
    assertThat(heater.rates().get(1).amount().low()).isEqualTo(0.113);
    assertThat(heater.rates().get(1).amount().likely()).isBetween(0.117, 0.127);
  }

  private List<Double> totals(String occupancy) {
    return table.dailyTotals().stream()
        .filter(t -> t.occupancy().equals(occupancy))
        .flatMap(t -> t.perDay().stream())
        .map(Quantity::value)
        .toList();
  }
}
