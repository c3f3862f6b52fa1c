package org.drysill.assess.ventilation.provided;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.physics.flow.LblBasicModel;
import org.drysill.reference.ventilation.StackAndWind;
import org.drysill.reference.ventilation.WindShelter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coefficients of the ASHRAE basic model, from memory; 5 °C and 4 m/s outdoors all year. */
class LeaksByMonthTest {
  private static final StackAndWind TABLE = VentilationFixtures.DEFAULTS.stackAndWind();

  private static Home home(String dwelling) {
    return VentilationFixtures.home(
        "england",
        "volume: 360, floor_area: 84, airtightness: {n50: 10 /h}, heating: {setpoint: 19 C}, "
            + dwelling,
        "- {id: bed, use: bedroom}");
  }

  private static ProvidedAir air(Home home) {
    return Provision.of(home, VentilationFixtures.DEFAULTS, Map.of());
  }

  private static Home withMonths(Home home, List<OutdoorClimate.Month> months) {
    OutdoorClimate c = home.climate();
    return new Home(
        home.survey(),
        home.floorArea(),
        home.volume(),
        home.storeys(),
        home.bedrooms(),
        home.occupants(),
        home.setpoint(),
        home.n50(),
        new OutdoorClimate(c.name(), months, c.basis(), c.sources(), c.note()),
        home.rooms(),
        home.money(),
        home.assumptions());
  }

  /** E32 of the worked rows: 350 cm², two storeys, class 3, 15 K, 3 m/s give 28.06 l/s. */
  @Test
  void the_table_gives_the_worked_example() {
    LblBasicModel model = new LblBasicModel(TABLE.stackOf(2), TABLE.windOf(WindShelter.NORMAL, 2));
    assertThat(model.flowM3S(0.0350, 15, 3) * 1000).isCloseTo(28.06, within(0.01));
  }

  @ParameterizedTest
  @CsvSource({
    "1, 0.000145, 0.000174",
    "3, 0.000435, 0.000271",
    "9, 0.000435, 0.000271",
    "0, 0.000145, 0.000174"
  })
  void past_the_table_its_end_holds(int storeys, double stack, double wind) {
    assertThat(TABLE.stackOf(storeys)).isEqualTo(stack);
    assertThat(TABLE.windOf(WindShelter.NORMAL, storeys)).isEqualTo(wind);
  }

  /**
   * A_L of 1 m³/s at 50 Pa: (4/50)^0.65 · √(1.2/8) = 0.07502 m²; by 0.7502 · √(0.00029 · 14 +
   * 0.000231 · 16) = 0.06607; of 10 /h 0.661 /h, of 360 m³ 66.1 l/s.
   */
  @Test
  void a_month_follows_from_its_warmth_and_wind() {
    LeaksByMonth leaks = air(home("storeys: 2")).leaksByMonth().orElseThrow();
    assertThat(leaks.months()).hasSize(12).extracting(LeaksByMonth.Month::number).startsWith(1);
    LeaksByMonth.Month january = leaks.months().get(0);
    double area = Math.pow(0.08, 0.65) * Math.sqrt(0.15) * 10;
    double share = area * Math.sqrt(0.00029 * 14 + 0.000231 * 16);
    assertThat(january.airChange().likely()).isCloseTo(10 * share, within(1e-9));
    assertThat(january.airChange().likely()).isCloseTo(0.661, within(0.001));
    assertThat(january.flow().likely()).isCloseTo(share, within(1e-9));
    assertThat(january.airChange().name()).endsWith("in January");
    assertThat(january.airChange().working().inputs())
        .extracting(Input::symbol)
        .containsExactly("n50", "r", "Ti", "Te", "U", "Cs", "Cw", "ρ");
    Map<String, Double> in =
        january.airChange().working().inputs().stream()
            .collect(Collectors.toMap(Input::symbol, i -> i.value().likely()));
    double shown =
        Math.pow(0.08, 0.65)
            * Math.sqrt(in.get("ρ") / 8)
            / 10
            * Math.sqrt(in.get("Cs") * (in.get("Ti") - in.get("Te")) + in.get("Cw") * 16);
    assertThat(in.get("r")).isCloseTo(shown, within(1e-9));
    assertThat(leaks.coldSeason().working().formula()).contains("mean over the days");
    assertThat(january.flow().working().inputs()).hasSize(2);
    assertThat(leaks.coldSeason().likely()).isCloseTo(10 * share, within(1e-9));
    assertThat(leaks.byDivisor().likely()).isCloseTo(10 / 16.0, within(1e-9));
    assertThat(leaks.byDivisor().working().inputs()).hasSize(2);
  }

  @Test
  void without_wind_nothing_is_told_by_month_and_the_range_is_that_of_the_divisors() {
    Home windy = home("storeys: 2");
    List<OutdoorClimate.Month> still =
        windy.climate().months().stream()
            .map(
                m ->
                    new OutdoorClimate.Month(
                        m.number(),
                        m.days(),
                        m.temperature(),
                        m.relativeHumidity(),
                        Optional.empty()))
            .toList();
    ProvidedAir air = air(withMonths(windy, still));
    assertThat(air.leaksByMonth()).isEmpty();
    assertThat(air.leaks().working().sources()).hasSize(4);
  }

  /** A storm of 12 m/s on open ground: 0.7502 · √(0.00203 + 0.000246 · 144) = 0.1451: N 6.9. */
  @Test
  void a_windy_place_widens_the_range_of_the_verdict() {
    Home home = home("storeys: 1, shelter: exposed");
    List<OutdoorClimate.Month> storm =
        home.climate().months().stream()
            .map(
                m ->
                    new OutdoorClimate.Month(
                        m.number(),
                        m.days(),
                        m.temperature(),
                        m.relativeHumidity(),
                        Optional.of(12.0)))
            .toList();
    ProvidedAir air = air(withMonths(home, storm));
    LeaksByMonth leaks = air.leaksByMonth().orElseThrow();
    assertThat(leaks.coldSeason().likely()).isGreaterThan(1.4);
    assertThat(air.leaks().value().high())
        .isCloseTo(leaks.months().get(0).flow().value().high(), within(1e-9));
  }

  @Test
  void still_air_as_warm_as_indoors_leaves_the_divisors_alone() {
    Home home = home("storeys: 1");
    List<OutdoorClimate.Month> same =
        home.climate().months().stream()
            .map(
                m ->
                    new OutdoorClimate.Month(
                        m.number(), m.days(), 19, m.relativeHumidity(), Optional.of(0.0)))
            .toList();
    ProvidedAir air = air(withMonths(home, same));
    assertThat(air.leaksByMonth().orElseThrow().coldSeason().likely()).isZero();
    assertThat(air.leaks().value().low()).isPositive();
  }

  @Test
  void the_cold_season_is_the_months_below_a_limit_or_the_coldest_three() {
    Home home = home("storeys: 1");
    List<OutdoorClimate.Month> warm =
        home.climate().months().stream()
            .map(
                m ->
                    new OutdoorClimate.Month(
                        m.number(), m.days(), 10 + m.number(), m.relativeHumidity(), m.windMs()))
            .toList();
    ColdSeason season =
        ColdSeason.of(withMonths(home, warm).climate(), VentilationFixtures.DEFAULTS);
    assertThat(season.months()).extracting(OutdoorClimate.Month::number).containsExactly(1, 2, 3);
    assertThat(ColdSeason.of(home.climate(), VentilationFixtures.DEFAULTS).months()).hasSize(12);
    assertThat(ColdSeason.of(home.climate(), VentilationFixtures.DEFAULTS).outdoor())
        .isCloseTo(5, within(1e-9));
  }
}
