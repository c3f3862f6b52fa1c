package org.drysill.options.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.MeasureMoney;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.effect.Studied;
import org.drysill.options.site.Candidate;
import org.drysill.options.site.Placings;
import org.junit.jupiter.api.Test;

/**
 * Energy and money of measures in a small flat, worked by hand.
 *
 * <p>It is 5 °C outdoors all year and 20 °C indoors: every month is heated, (20 − 5) · 8760 = 131
 * 400 Kh. One m³/s of air then takes 0.34 Wh/(m³K) = 1224 J/(m³K): 1224 W/K · 131 400 Kh / 1000 =
 * 160 834 kWh of heat, and 160 834 / 0.85 = 189 216 kWh of gas.
 */
class MoneyByHandTest {
  private static final double GAS_KWH_PER_FLOW = 1224 * 131_400 / 1000.0 / 0.85;
  private static final String FLAT = OptionsFixtures.text("small-flat");

  private static Costed costed(String survey, String measure, String place) {
    Assessment assessment = OptionsFixtures.assess(survey);
    OptionsBasis basis = OptionsFixtures.basis();
    Candidate candidate =
        new Placings(assessment, basis)
            .of(OptionsFixtures.measure(measure)).candidates().stream()
                .filter(c -> c.id().equals(measure + place))
                .findFirst()
                .orElseThrow();
    Studied studied = new EffectStudy(assessment, basis).of(candidate).orElseThrow();
    return new MoneyStudy(assessment, basis).of(studied);
  }

  private static MeasureMoney money(String survey, String measure, String place) {
    return costed(survey, measure, place).money();
  }

  /**
   * The unit exchanges 8 l/s and keeps 0.8 · 0.7 = 0.56 of their heat, 4.48 l/s. The old fan took 6
   * l/s for 4 h a day, 1 l/s, which goes: with leaks Qi the home had √(1² + Qi²) and has 8 + Qi.
   */
  @Test
  void a_recovery_unit_takes_the_heat_that_it_does_not_keep() {
    Costed unit = costed(FLAT, "single-room-recovery", ".bathroom");
    double leaks =
        OptionsFixtures.assess(FLAT).ventilation().provided().infiltration().likely() * 1000;
    double added = 8 + leaks - Math.hypot(1, leaks);
    assertThat(unit.studied().addedAir() * 1000).isCloseTo(added, within(1e-6));
    assertThat(unit.money().heatLost().likely())
        .isCloseTo((added - 4.48) / 1000 * GAS_KWH_PER_FLOW, within(0.01));
    assertThat(unit.money().heatSaved().likely()).isZero();
  }

  /** 8 W · 8760 h = 70.08 kWh, less 30 W · 4/24 · 8760 h = 43.80 kWh of the fan that goes. */
  @Test
  void the_electricity_of_the_fan_that_goes_is_credited() {
    assertThat(money(FLAT, "single-room-recovery", ".bathroom").electricity().likely())
        .isCloseTo(26.28, within(0.001));
    String unknown = FLAT.replace("power: 30 W, ", "");
    assertThat(money(unknown, "single-room-recovery", ".bathroom").electricity().likely())
        .isCloseTo(70.08, within(0.001));
  }

  /**
   * heat 639 kWh (leaks 3.6 l/s); energy 639 · 0.06 + 26.28 · 0.27; upkeep 20. CO2 at 0.18296 and
   * 0.177 kg/kWh.
   */
  @Test
  void running_cost_and_carbon_dioxide_follow_from_the_energy() {
    MeasureMoney m = money(FLAT, "single-room-recovery", ".bathroom");
    double heat = m.heatLost().likely();
    assertThat(m.energyCost().orElseThrow().likely())
        .isCloseTo(heat * 0.06 + 26.28 * 0.27, within(0.001));
    assertThat(m.runningCost().orElseThrow().likely())
        .isCloseTo(heat * 0.06 + 26.28 * 0.27 + 20, within(0.001));
    assertThat(m.co2().likely()).isCloseTo(heat * 0.18296 + 26.28 * 0.177, within(0.001));
  }

  /**
   * A unit of the same kind was measured here: (12.5 − 5) / (20 − 5) = 0.5 goes before the maker.
   */
  @Test
  void a_ratio_measured_in_this_home_goes_before_the_declared_one() {
    String tested =
        FLAT.replace(
            "  - id: bedroom\n",
            "    fans: [{id: unit, kind: alternating heat recovery, measured_flow: {value: 6 l/s, instrument: hood}, power: 4 W, run: continuous, declared_heat_recovery: 90 %,"
                + " heat_recovery_tests: [{at: 2026-01-22T09:15, indoor: 20 C, outdoor: 5 C, supply: 12.5 C, whole_cycle: yes, instrument: th}]}]\n"
                + "  - id: bedroom\n");
    assertThat(money(tested, "single-room-recovery-pair", ".home").heatLost().likely())
        .isCloseTo(9 * (1 - 0.5) / 1000 * GAS_KWH_PER_FLOW, within(0.01));
    assertThat(money(FLAT, "single-room-recovery-pair", ".home").heatLost().likely())
        .isCloseTo(9 * (1 - 0.85 * 0.65) / 1000 * GAS_KWH_PER_FLOW, within(0.01));
  }

  /** A recovery unit that goes kept 0.8 · 0.65 of the heat of half of its 6 l/s. */
  @Test
  void the_recovery_of_a_unit_that_goes_is_missed() {
    String unit =
        FLAT.replace(
            "{id: old-fan, kind: intermittent extract, measured_flow: {value: 6 l/s, instrument: hood}, power: 30 W, hours_per_day: 4 h}",
            "{id: unit, kind: alternating heat recovery, measured_flow: {value: 6 l/s, instrument: hood}, power: 4 W, run: continuous, declared_heat_recovery: DECLARED}");
    double keeps =
        money(unit.replace("DECLARED", "80 %"), "single-room-recovery", ".bathroom")
            .heatLost()
            .likely();
    double none =
        money(unit.replace("DECLARED", "0 %"), "single-room-recovery", ".bathroom")
            .heatLost()
            .likely();
    assertThat(keeps - none).isCloseTo(3 * 0.8 * 0.65 / 1000 * GAS_KWH_PER_FLOW, within(0.01));
  }

  /**
   * In air of 20 °C each kg takes 0.63 · 4/6 + 0.5 · 2/6 = 0.58667 kWh and gives (2 501 000 − 2326
   * · 20) J = 0.6818 kWh when it condenses; 0.7 of both heats the home in place of gas at 85 %.
   */
  @Test
  void the_heat_of_a_dehumidifier_and_of_its_water_is_credited() {
    Costed machine = costed(FLAT, "dehumidifier", ".home");
    double kg = machine.studied().water().likely() * 3600 * 8760;
    assertThat(machine.money().electricity().likely()).isCloseTo(kg * 0.58667, within(0.01));
    assertThat(machine.money().heatSaved().likely())
        .isCloseTo(kg * (0.58667 + 0.68180) * 0.7 / 0.85, within(0.05));
  }

  /** A source of washing in the bathroom of the flat. */
  private static String washing(String told) {
    return FLAT.replace(
        "[{kind: shower", "[{kind: clothes drying indoors, " + told + "}, {kind: shower");
  }

  /**
   * 4 loads a week are 4 · 365 / 7 = 208.57 a year, however little water readings leave to them:
   * 1.4 kWh each. Of the water that is spared each kg takes 0.6818 kWh from the room no more; 0.7
   * of that and of the electricity heats the home in place of gas at 85 %.
   */
  @Test
  void a_dryer_dries_the_loads_that_are_listed() {
    Costed dryer = costed(washing("loads_per_week: 4"), "heat-pump-dryer", ".home");
    double kwh = 1.4 * 4 * 365 / 7;
    double kg = dryer.studied().water().likely() * 3600 * 8760;
    assertThat(dryer.money().electricity().value().low()).isCloseTo(kwh / 1.4, within(0.01));
    assertThat(dryer.money().electricity().likely()).isCloseTo(kwh, within(0.01));
    assertThat(dryer.money().heatSaved().likely())
        .isCloseTo((kg * 0.68180 + kwh) * 0.7 / 0.85, within(0.05));
    assertThat(OptionsFixtures.study(washing("loads_per_week: 4")).assumptions())
        .noneMatch(a -> a.id().equals("options.load"));
  }

  /** 1 kg a day at 2.5 kg a load are 146 loads a year. */
  @Test
  void washing_that_is_listed_by_its_water_counts_by_the_usual_load() {
    String weighed = washing("rate: 1 kg/day");
    assertThat(money(weighed, "heat-pump-dryer", ".home").electricity().likely())
        .isCloseTo(1.4 * 146, within(0.01));
    assertThat(OptionsFixtures.study(weighed).assumptions())
        .anyMatch(a -> a.id().equals("options.load"));
    assertThat(
            money(washing("rate: 1 kg/day, loads_per_week: 3"), "heat-pump-dryer", ".home")
                .electricity()
                .likely())
        .isCloseTo(1.4 * 3 * 365 / 7, within(0.01));
  }

  /** A dryer with a duct outside heats its water itself: the room no longer does, nor gets any. */
  @Test
  void what_dries_outside_no_longer_takes_the_heat_of_the_room() {
    Costed vented = costed(washing("loads_per_week: 4"), "vented-dryer", ".home");
    double kg = vented.studied().water().likely() * 3600 * 8760;
    assertThat(vented.money().electricity().likely()).isCloseTo(3.5 * 4 * 365 / 7, within(0.01));
    assertThat(vented.money().heatSaved().likely())
        .isCloseTo(kg * 0.68180 * 0.7 / 0.85, within(0.05));
    Costed room = costed(washing("loads_per_week: 4"), "drying-room", ".home");
    assertThat(room.money().heatSaved().likely()).isZero();
  }

  /** Airing throws 125 m³ of outdoor air through the home for each kg of water that leaves. */
  @Test
  void airing_costs_the_heat_of_the_air_that_carries_water_out() {
    Costed airing = costed(FLAT, "purge-habit", ".home");
    assertThat(airing.money().heatLost().likely())
        .isCloseTo(airing.studied().water().likely() * 125 * GAS_KWH_PER_FLOW, within(0.01));
    assertThat(airing.money().firstCost().orElseThrow().likely()).isZero();
    assertThat(airing.money().againstNothing().words()).contains("more every year");
  }

  /** 1.5 m · 1.2 m of glass from 2.8 to 1.4 W/(m²K), by the data of the two panes. */
  @Test
  void a_better_window_saves_the_heat_of_its_area() {
    OptionsBasis basis = OptionsFixtures.basis();
    double before = basis.glazing().find("double 16 mm").orElseThrow().ug().range().likely();
    double after = 1.4;
    assertThat(money(FLAT, "double-glazing", ".living-n").heatSaved().likely())
        .isCloseTo((before - after) * 1.8 * 131_400 / 1000 / 0.85, within(0.01));
    assertThat(money(FLAT, "double-glazing", ".living-n").price().orElseThrow().count())
        .isCloseTo(1.8, within(1e-9));
  }

  /**
   * A cold room of 14 m² kept 2 K warmer at 14 kWh/(K·m²), 200 W/K by 84 m² over 5832 h: 392 kWh of
   * heat, 461.2 kWh of gas.
   */
  @Test
  void a_warmer_room_takes_heat() {
    String cold =
        FLAT.replace(
            "use: bedroom\n    floor_area: 14 m2",
            "use: bedroom\n    setpoint: 15 C\n    floor_area: 14 m2");
    assertThat(money(cold, "heating-pattern", ".bedroom").heatLost().likely())
        .isCloseTo(392 / 0.85, within(0.01));
  }
}
