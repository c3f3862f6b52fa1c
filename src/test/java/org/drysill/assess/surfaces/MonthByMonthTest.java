package org.drysill.assess.surfaces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.surfaces.SurfaceFixtures.assess;
import static org.drysill.assess.surfaces.SurfaceFixtures.constant;
import static org.drysill.assess.surfaces.SurfaceFixtures.home;
import static org.drysill.assess.surfaces.SurfaceFixtures.place;
import static org.drysill.assess.surfaces.SurfaceFixtures.vapour;
import static org.drysill.assess.surfaces.SurfaceFixtures.withClimate;

import org.drysill.assess.Verdict;
import org.drysill.assess.surfaces.months.MonthRow;
import org.drysill.assess.surfaces.months.Risk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MonthByMonthTest {
  private static final String CORNER =
      "cold_spots: [{id: corner, kind: external corner, temperature_factor: 0.62 ± 0.02}]";

  /**
   * Our own worked year, NOT PUBLISHED: the procedure of ISO 13788:2012, clause 5 (memory), with an
   * invented climate, 20 °C, surface humidity 80 %, upper limit of humidity class 3.
   */
  @ParameterizedTest
  @CsvSource({
    "1,0.6688", "2,0.6467", "3,0.5911", "4,0.5118", "5,0.4115", "6,0.3036",
    "7,0.1684", "8,0.2976", "9,0.4768", "10,0.5717", "11,0.6418", "12,0.6686"
  })
  void required_factors_of_the_worked_year(int month, double required) {
    MonthRow row = place(assess(home("", CORNER)), "corner").months().rows().get(month - 1);
    assertThat(row.requiredFactor().orElseThrow().likely()).isCloseTo(required, within(0.0005));
  }

  /**
   * The same year by hand: January pe 724.0 Pa, excess 627.8, pi 1351.8. The surface at 0.62 is 4.5
   * + 0.62 x 15.5 = 14.11 °C, its saturation pressure 1609 Pa, its humidity 84 %.
   */
  @Test
  void the_january_of_the_worked_year() {
    ColdPlace corner = place(assess(home("", CORNER)), "corner");
    MonthRow january = corner.months().rows().get(0);
    assertThat(january.vapourPressure().likely()).isCloseTo(1351.8, within(0.5));
    assertThat(january.surface().likely()).isCloseTo(14.11, within(0.005));
    assertThat(january.surfaceHumidity().likely()).isCloseTo(0.840, within(0.001));
    assertThat(january.risk()).isEqualTo(Risk.MOULD);
    assertThat(corner.months().criticalMonth()).contains(1);
    assertThat(corner.months().monthsAtRisk()).containsExactly(1, 2, 11, 12);
    assertThat(corner.verdict())
        .isEqualTo("Mould finds enough moisture on it in November to February.");
    assertThat(corner.requirement().verdict()).isEqualTo(Verdict.SHORT);
    assertThat(corner.requirement().because())
        .isEqualTo("Its factor of 0.62 is too low in January, which needs 0.67.");
    assertThat(corner.requirement().settledBy()).isEmpty();
  }

  /**
   * DIN 4108-2:2013-02 (seen): 20 °C and 50 % indoors, -5 °C outdoors ask for 12.6 °C, a factor of
   * 0.704. Vapour indoors: half of 2336.95 Pa; outdoors at 80 % over ice 321 Pa, so 847.5 Pa
   * excess.
   */
  @Test
  void the_german_limit() {
    double overWater = 320.9 / 421.4; // 80 % over ice in a climate that counts over water
    ColdPlace corner =
        place(
            SurfaceAssessor.assess(
                withClimate(home("", CORNER), constant(-5, overWater)),
                vapour(1168.5 - 320.9, -5),
                SurfaceFixtures.TABLES),
            "corner");
    MonthRow row = corner.months().rows().get(0);
    assertThat(row.requiredFactor().orElseThrow().likely()).isCloseTo(0.704, within(0.002));
    assertThat(row.indoorHumidity().likely()).isCloseTo(0.50, within(0.002));
  }

  @Test
  void a_factor_above_what_is_asked_meets_it() {
    String keys = "cold_spots: [{id: corner, kind: external corner, temperature_factor: 0.9}]";
    ColdPlace corner = place(assess(home("", keys)), "corner");
    assertThat(corner.requirement().verdict()).isEqualTo(Verdict.MEETS);
    assertThat(corner.published().orElseThrow().verdict()).isEqualTo(Verdict.MEETS);
    assertThat(corner.verdict()).isEqualTo("It stays below its limit all year.");
    assertThat(corner.months().gravest()).isEqualTo(Risk.NONE);
  }

  @Test
  void a_factor_whose_bounds_hold_what_is_asked_cannot_be_told() {
    String keys =
        "cold_spots: [{id: corner, kind: external corner, temperature_factor: 0.69 ± 0.05}]";
    ColdPlace corner = place(assess(home("", keys)), "corner");
    assertThat(corner.requirement().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(corner.requirement().settledBy().orElseThrow()).startsWith("Read or log");
    assertThat(corner.verdict()).startsWith("It probably stays below its limit");
  }

  @Test
  void measured_vapour_sends_the_reader_to_the_surface() {
    String keys =
        "cold_spots: [{id: corner, kind: external corner, temperature_factor: 0.69 ± 0.05}]";
    ColdPlace corner =
        place(
            SurfaceAssessor.assess(home("", keys), vapour(810, 0), SurfaceFixtures.TABLES),
            "corner");
    assertThat(corner.requirement().settledBy().orElseThrow()).startsWith("On a cold day");
  }

  @Test
  void a_wet_place_says_so() {
    String keys = "cold_spots: [{id: corner, kind: external corner, temperature_factor: 0.2}]";
    assertThat(place(assess(home("", keys)), "corner").verdict())
        .startsWith("It is wet or moist enough for mould in ");
  }

  @Test
  void where_it_is_never_cold_no_factor_is_asked() {
    ColdPlace corner = place(assess(withClimate(home("", CORNER), constant(25, 0.5))), "corner");
    assertThat(corner.months().criticalMonth()).isEmpty();
    assertThat(corner.requirement().verdict()).isEqualTo(Verdict.MEETS);
    assertThat(corner.requirement().because()).startsWith("It is never cold enough");
    assertThat(corner.months().rows().get(0).indoor()).isEqualTo(27);
  }

  /**
   * 25 °C and 95 % outdoors, 27 °C indoors without any excess: 3008 Pa at a surface of 25 + 0.62 x
   * 2 = 26.24 °C, saturated at 3407 Pa, are 88 %. No factor is required, yet mould has what it
   * needs.
   */
  @Test
  void a_place_that_the_air_alone_makes_too_humid_does_not_meet() {
    ColdPlace corner = place(assess(withClimate(home("", CORNER), constant(25, 0.95))), "corner");
    assertThat(corner.months().rows().get(0).surfaceHumidity().likely())
        .isCloseTo(0.883, within(0.001));
    assertThat(corner.requirement().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(corner.requirement().because()).contains("every month", "the air itself");
    assertThat(corner.requirement().settledBy().orElseThrow()).startsWith("Read or log");
  }

  @Test
  void a_country_without_a_critical_factor_gets_no_comparison() {
    assertThat(place(assess(home("atlantis", "", CORNER)), "corner").published()).isEmpty();
  }

  @Test
  void the_workings_name_clause_and_inputs() {
    ColdPlace corner = place(assess(home("", CORNER)), "corner");
    assertThat(corner.months().requiredFactor().orElseThrow().working().sources())
        .extracting(c -> c.document())
        .contains("ISO 13788");
    assertThat(corner.months().lowestDryHumidity().working().inputs())
        .extracting(i -> i.symbol())
        .contains("f", "φ", "Ti", "Te");
    assertThat(corner.months().highestSurfaceHumidity().working().note())
        .contains("The mean of January.");
    assertThat(corner.published().orElseThrow().required().orElseThrow().working().formula())
        .isEqualTo("f as printed");
  }
}
