package org.drysill.options.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Figure;
import org.drysill.options.OptionsBasis;
import org.drysill.options.Payback;
import org.drysill.options.RecoveryWorth;
import org.drysill.physics.Range;
import org.drysill.physics.energy.GlobalCost;
import org.drysill.physics.energy.PresentValue;
import org.junit.jupiter.api.Test;

/**
 * Heat recovery beside the same air without, by hand in the flat in which it is 5 °C outdoors all
 * year. A pair costs 900 to 2600, likely 1500, upkeep 20, 15 years; a continuous extract fan 300 to
 * 900, likely 450, upkeep and power by the data, 12 years.
 */
class RecoveryWorthsTest {
  private static final double GAS_KWH_PER_FLOW = 1224 * 131_400 / 1000.0 / 0.85;
  private static final String FLAT = OptionsFixtures.text("small-flat");
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final String UNIT =
      "{id: u, kind: alternating heat recovery, measured_flow: {value: 6 l/s, instrument: hood},"
          + " power: 4 W, run: continuous, declared_heat_recovery: 90 %";
  private static final String TEST =
      ", heat_recovery_tests: [{at: 2026-01-22T09:15, indoor: 20 C, outdoor: 5 C, supply: 12.5 C,"
          + " whole_cycle: yes, instrument: th}]}";

  private static Optional<RecoveryWorth> worth(String survey) {
    return new FanCosts(OptionsFixtures.assess(survey), BASIS)
        .all().stream().flatMap(f -> f.worth().stream()).findFirst();
  }

  private static String with(String fan) {
    return FLAT.replaceAll("fans: \\[.*\\]", "fans: [" + fan + "]");
  }

  private static double payments(double first, double life) {
    return new GlobalCost(first, life, 20, 0.035).perYear(0);
  }

  /** 3 l/s exchanged; half of the heat is kept; the other fan moves 3 l/s too. */
  @Test
  void the_difference_is_heat_kept_less_electricity_less_what_both_cost() {
    RecoveryWorth worth = worth(with(UNIT + TEST)).orElseThrow();
    double kept = 3 * 0.5 / 1000 * GAS_KWH_PER_FLOW;
    var fan = BASIS.catalogue().measure("continuous-extract").orElseThrow();
    double power = fan.power().orElseThrow().range().likely() * 8.76;
    double saves = kept * 0.06 - (4 * 8.76 - power) * 0.27 - (10 - fan.upkeep().range().likely());
    double more = payments(750, 15) - payments(450, fan.lifeYears());
    assertThat(worth.measured()).isTrue();
    assertThat(worth.other()).isEqualTo("continuous-extract");
    assertThat(worth.here()).isTrue();
    assertThat(worth.heatKept().likely()).isCloseTo(kept, within(0.01));
    assertThat(worth.heatLost().likely()).isCloseTo(kept, within(0.01));
    assertThat(worth.otherHeatLost().likely()).isCloseTo(2 * kept, within(0.01));
    assertThat(worth.electricity().likely()).isCloseTo(4 * 8.76, within(0.01));
    assertThat(worth.otherElectricity().likely()).isCloseTo(power, within(0.01));
    assertThat(worth.first().value()).isEqualTo(new Range(450, 750, 1300));
    assertThat(worth.otherFirst().value()).isEqualTo(new Range(300, 450, 900));
    assertThat(worth.savesYearly().likely()).isCloseTo(saves, within(0.01));
    assertThat(worth.leftYearly().likely()).isCloseTo(saves - more, within(0.01));
    assertThat(worth.leftOverHorizon().likely())
        .isCloseTo((saves - more) * PresentValue.annuityPresentValueFactor(0.035, 20), within(0.1));
    assertThat(worth.annual().likely() - worth.otherAnnual().likely())
        .isCloseTo(more - saves, within(0.01));
  }

  @Test
  void ranges_are_carried_and_every_figure_has_a_working_of_its_own() {
    RecoveryWorth worth = worth(with(UNIT + TEST)).orElseThrow();
    assertThat(worth.leftYearly().value().low()).isLessThan(worth.leftYearly().likely());
    assertThat(worth.leftYearly().value().high()).isGreaterThan(worth.leftYearly().likely());
    for (Figure figure :
        new Figure[] {
          worth.first(),
          worth.annual(),
          worth.otherFirst(),
          worth.otherHeatLost(),
          worth.otherElectricity(),
          worth.otherAnnual(),
          worth.savesYearly(),
          worth.leftYearly(),
          worth.leftOverHorizon()
        }) {
      assertThat(figure.id()).startsWith("options.fan.u.worth.");
      assertThat(figure.working().formula()).isNotBlank();
    }
  }

  @Test
  void payback_is_honest() {
    RecoveryWorth little = worth(with(UNIT.replace("6 l/s", "1 l/s") + TEST)).orElseThrow();
    assertThat(little.savesYearly().likely())
        .isLessThan(worth(with(UNIT + TEST)).orElseThrow().savesYearly().likely());
    assertThat(little.leftYearly().likely()).isNegative();
    assertThat(little.payback().against()).isEqualTo("the same air by continuous extract fan");
    assertThat(
            worth(with(UNIT.replace("power: 4 W", "power: 40 W") + TEST)).orElseThrow().payback())
        .satisfies(p -> assertThat(p.kind()).isEqualTo(Payback.Kind.NEVER))
        .satisfies(p -> assertThat(p.words()).contains("never pays"));
  }

  @Test
  void a_declared_recovery_is_taken_down_and_marked() {
    RecoveryWorth declared = worth(with(UNIT + "}")).orElseThrow();
    assertThat(declared.measured()).isFalse();
    assertThat(declared.heatKept().likely())
        .isCloseTo(3 * 0.9 * 0.65 / 1000 * GAS_KWH_PER_FLOW, within(0.01));
  }

  @Test
  void power_that_nobody_noted_is_that_of_such_units() {
    RecoveryWorth worth = worth(with(UNIT.replace("power: 4 W, ", "") + TEST)).orElseThrow();
    assertThat(worth.electricity().value().low()).isCloseTo(1.5 * 8.76, within(1e-9));
    assertThat(worth.electricity().likely()).isCloseTo(3 * 8.76, within(1e-9));
  }

  @Test
  void a_unit_where_nothing_else_fits_is_held_against_air_drawn_through_the_home() {
    String bedroom =
        FLAT.replace("  - id: bathroom", "    fans: [" + UNIT + TEST + "]\n  - id: bathroom");
    RecoveryWorth worth = worth(bedroom).orElseThrow();
    assertThat(worth.here()).isFalse();
    assertThat(worth.other()).isEqualTo("continuous-extract");
  }

  @Test
  void an_opening_that_moves_as_much_is_one_of_the_others() {
    String small =
        FLAT.replace(
            "  - id: bathroom",
            "    fans: [" + UNIT.replace("6 l/s", "2.5 l/s") + TEST + "]\n  - id: bathroom");
    RecoveryWorth worth = worth(small).orElseThrow();
    assertThat(worth.here()).isTrue();
    assertThat(worth.other()).endsWith("-ventilator");
    assertThat(worth.otherElectricity().likely()).isZero();
  }

  @Test
  void without_prices_in_the_currency_there_is_nothing_to_tell() {
    assertThat(worth(with(UNIT + TEST).replace("currency: GBP", "currency: SEK"))).isEmpty();
    assertThat(worth(FLAT)).isEmpty();
    String quoted =
        with(UNIT + TEST) + "options: {prices: {single-room heat recovery pair: 1000}}\n";
    assertThat(worth(quoted).orElseThrow().first().value()).isEqualTo(Range.exactly(500));
  }
}
