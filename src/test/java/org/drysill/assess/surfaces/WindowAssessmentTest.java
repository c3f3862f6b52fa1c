package org.drysill.assess.surfaces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.surfaces.SurfaceFixtures.assess;
import static org.drysill.assess.surfaces.SurfaceFixtures.constant;
import static org.drysill.assess.surfaces.SurfaceFixtures.home;
import static org.drysill.assess.surfaces.SurfaceFixtures.place;
import static org.drysill.assess.surfaces.SurfaceFixtures.withClimate;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.factor.FactorSource;
import org.drysill.assess.surfaces.months.MonthRow;
import org.junit.jupiter.api.Test;

class WindowAssessmentTest {
  private static final String SINGLE =
      "windows: [{id: w, orientation: N, width: 1200 mm, height: 1000 mm, glazing: single,"
          + " frame: timber, condensation_seen: daily}]";

  /**
   * A single pane, Ug 5.8, by hand: f = 1 - 5.8 x 0.13 = 0.246. A cold night of 0 °C lies 7 K below
   * a month of 7 °C. The pane is 0.246 x 20 = 4.92 °C and wet from 37.1 % indoors at 20 °C up.
   */
  @Test
  void a_single_pane_at_freezing_is_wet_from_37_percent() {
    Home home = withClimate(home("", SINGLE), constant(7, 0.8));
    ColdPlace pane = place(assess(home), "w.centre");
    assertThat(pane.factor().figure().likely()).isCloseTo(0.246, within(1e-9));
    MonthRow night = pane.months().rows().get(0);
    assertThat(night.outdoor()).isEqualTo(0);
    assertThat(night.surface().likely()).isCloseTo(4.92, within(0.001));
    assertThat(night.highestIndoorHumidity().likely()).isCloseTo(0.371, within(0.001));
  }

  @Test
  void a_single_pane_can_never_stay_dry() {
    ColdPlace pane = place(assess(home("", SINGLE)), "w.centre");
    assertThat(pane.neverDry().orElseThrow())
        .startsWith("A single pane can never stay dry at a humidity that people live in");
    assertThat(pane.requirement().verdict()).isEqualTo(Verdict.SHORT);
    assertThat(pane.verdict()).startsWith("Water forms on it on cold nights in ");
    assertThat(pane.seen().trouble()).isTrue();
    assertThat(pane.published()).isEmpty();
    assertThat(pane.kindWords()).isEqualTo("a single pane");
    assertThat(pane.name()).isEqualTo("window facing N, middle of the pane");
  }

  @Test
  void a_single_pane_has_no_edge_of_its_own() {
    assertThat(assess(home("", SINGLE)).places())
        .extracting(ColdPlace::id)
        .containsExactly("w.centre");
  }

  /**
   * By hand for a night of 0 °C: class 3 gives 810 Pa above 95 % of 610.5 Pa = 580 Pa, so 1390 Pa
   * indoors; ps(4.92 °C) = 867 Pa; 7e-9 x 3 x 523 Pa x 1.2 m² x 28800 s = 0.380 kg.
   */
  @Test
  void a_night_leaves_hundreds_of_grams_at_most() {
    Home home = withClimate(home("", SINGLE), constant(7, 0.8));
    ColdPlace pane = place(assess(home), "w.centre");
    assertThat(pane.condensate().orElseThrow().likely()).isCloseTo(0.380, within(0.002));
    assertThat(pane.condensate().orElseThrow().working().formula())
        .isEqualTo("m = 7·10⁻⁹ · hc · max(0, pi - ps(Tsi)) · A · t · 3600 s/h");
    assertThat(pane.condensate().orElseThrow().working().note().orElseThrow())
        .contains("upper bound");
  }

  @Test
  void coated_double_glazing_has_centre_and_edge() {
    String keys = "windows: [{id: w, glazing: double low-e argon, frame: pvc}]";
    CondensationResult result = assess(home("", keys));
    assertThat(place(result, "w.centre").factor().figure().likely())
        .isGreaterThan(place(result, "w.edge").factor().figure().likely());
    assertThat(place(result, "w.centre").neverDry()).isEmpty();
    assertThat(place(result, "w.centre").condensate()).isEmpty();
    assertThat(place(result, "w.edge").factor().weak()).isTrue();
    assertThat(place(result, "w.edge").factor().figure().working().sources()).hasSize(1);
    assertThat(place(result, "w.edge").name()).isEqualTo("window w, lower edge of the pane");
    assertThat(result.coldestFirst().get(0).id()).isEqualTo("w.edge");
  }

  @Test
  void metal_frames_make_the_edge_colder() {
    String wood = "windows: [{id: w, glazing: double, frame: timber}]";
    String broken = "windows: [{id: w, glazing: double, frame: metal with thermal break}]";
    String metal = "windows: [{id: w, glazing: double, frame: metal}]";
    assertThat(
            List.of(wood, broken, metal).stream()
                .map(k -> place(assess(home("", k)), "w.edge").factor().figure().likely()))
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
        .containsExactly(0.475, 0.425, 0.30);
  }

  @Test
  void a_single_pane_in_metal_has_no_edge() {
    for (String frame : List.of("metal", "metal with thermal break")) {
      String keys = "windows: [{id: w, glazing: single, frame: " + frame + "}]";
      assertThat(assess(home("", keys)).places())
          .extracting(ColdPlace::id)
          .containsExactly("w.centre", "w.frame");
    }
  }

  @Test
  void a_stated_u_value_of_the_pane_counts_before_its_kind() {
    String keys = "windows: [{id: w, glazing: single, u_value: 1.1 W/m2K}]";
    ColdPlace pane = place(assess(home("", keys)), "w.centre");
    assertThat(pane.factor().source()).isEqualTo(FactorSource.U_VALUE);
    assertThat(pane.factor().figure().likely()).isCloseTo(0.857, within(1e-9));
    assertThat(pane.factor().figure().working().formula())
        .isEqualTo("f = 1 - min(Ug; 1 / (Rsi + Rse)) · Rsi");
    assertThat(pane.factor().figure().working().inputs().get(0).basis()).isEqualTo(Basis.DECLARED);
    assertThat(pane.factor().figure().working().note().orElseThrow()).contains("curtain");
    assertThat(pane.months().lowestDryHumidity().working().note().orElseThrow())
        .startsWith("A cold night of ");
  }

  @Test
  void a_u_value_alone_names_the_glazing() {
    String keys = "windows: [{id: w, name: Bay, u_value: 1.1 W/m2K}]";
    ColdPlace pane = place(assess(home("", keys)), "w.centre");
    assertThat(pane.kindWords()).isEqualTo("glazing of 1.1 W/m2K");
    assertThat(pane.name()).isEqualTo("Bay, middle of the pane");
  }

  @Test
  void glazing_that_nobody_noted_is_assumed_and_said() {
    CondensationResult result = assess(home("", "windows: [{id: w}]"));
    ColdPlace pane = place(result, "w.centre");
    assertThat(pane.factor().figure().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(pane.factor().weak()).isTrue();
    assertThat(pane.requirement().verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(pane.requirement().settledBy().orElseThrow()).startsWith("On a cold day");
    assertThat(result.assumptions()).extracting(a -> a.id()).contains("surface.glazing");
  }

  /** (8.9 - 3.2) / (19.8 - 3.2) = 0.343. */
  @Test
  void a_window_that_was_read_has_a_place_of_its_own() {
    String keys =
        """
        readings: [{at: 2026-01-22T10:05, temperature: 19.8 C, humidity: 64 %, instrument: th1}]
        windows:
          - id: w
            width: 1200 mm
            height: 1050 mm
            readings:
              - {at: 2026-01-22T10:10, surface: 8.9 C, at_point: lower edge, instrument: ir1}
              - {at: 2026-01-22T10:11, surface: 10.1 C, at_point: middle, instrument: ir1}
        """;
    CondensationResult result =
        assess(
            home(
                "{at: 2026-01-22T09:40, temperature: 3.2 C, humidity: 88 %, instrument: th1}",
                keys));
    assertThat(result.places()).extracting(ColdPlace::id).containsExactly("w.read");
    ColdPlace read = place(result, "w.read");
    assertThat(read.factor().source()).isEqualTo(FactorSource.READINGS);
    assertThat(read.factor().figure().likely()).isCloseTo(5.7 / 16.6, within(1e-9));
    assertThat(read.factor().why())
        .isEqualTo("From one reading, lower edge: indoors was 16.6 K warmer than outdoors.");
    assertThat(read.condensate()).isPresent();
    assertThat(read.now().orElseThrow().margin().likely()).isNegative();
  }

  @Test
  void refused_readings_leave_the_glazing_and_say_why() {
    String keys =
        """
        windows:
          - id: w
            glazing: double
            readings: [{surface: 15 C, air: 19 C, outdoor: 15 C}]
        """;
    ColdPlace pane = place(assess(home("", keys)), "w.centre");
    assertThat(pane.factor().source()).isEqualTo(FactorSource.GLAZING);
    assertThat(pane.factor().readings()).hasSize(1);
    assertThat(pane.factor().why()).contains("refused: indoors was only 4.0 K warmer");
  }

  /**
   * By hand: no U exceeds 1/(0.13 + 0.04), so bare metal has 1 - 0.13/0.17 = 0.235; with a break
   * 2.2 to 3.5 it is 0.545 to 0.714.
   */
  @Test
  void frames_of_metal_are_places_of_their_own() {
    ColdPlace bare =
        place(assess(home("", SINGLE.replace("frame: timber", "frame: metal"))), "w.frame");
    assertThat(bare.factor().figure().likely()).isCloseTo(0.235, within(0.001));
    assertThat(bare.kind()).isEqualTo(PlaceKind.FRAME);
    assertThat(bare.name()).isEqualTo("window facing N, frame");
    assertThat(bare.factor().figure().working().formula())
        .isEqualTo("f = 1 - min(Uf; 1 / (Rsi + Rse)) · Rsi");
    assertThat(bare.factor().figure().working().inputs())
        .extracting(Input::symbol)
        .containsExactly("Uf", "Rsi", "Rse");
    ColdPlace broken =
        place(
            assess(home("", SINGLE.replace("frame: timber", "frame: metal with thermal break"))),
            "w.frame");
    assertThat(broken.factor().figure().value().low()).isCloseTo(0.545, within(0.001));
    assertThat(broken.factor().figure().value().high()).isCloseTo(0.714, within(0.001));
    assertThat(assess(home("", SINGLE)).places())
        .extracting(ColdPlace::id)
        .doesNotContain("w.frame");
  }
}
