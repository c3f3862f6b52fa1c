package org.drysill.assess.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.change.ChangeFixtures.OUTDOOR;
import static org.drysill.assess.change.ChangeFixtures.compare;
import static org.drysill.assess.change.ChangeFixtures.reading;
import static org.drysill.assess.change.ChangeFixtures.visit;

import java.util.List;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.ChangeFixtures.Visit;
import org.drysill.assess.change.device.FanChange;
import org.drysill.assess.change.device.RecoveryChange;
import org.drysill.assess.change.place.ColdSpotChange;
import org.drysill.assess.change.place.SameAirChange;
import org.drysill.assess.change.shown.Doubt;
import org.drysill.assess.change.shown.Shown;
import org.drysill.survey.TimelineEvent;
import org.junit.jupiter.api.Test;

/** Cold spots, mould, fans and works of two visits. */
class PlacesAndFansTest {
  private static String spots(double percent, String spots) {
    return "- {id: bed, use: bedroom, readings: [%s], cold_spots: [%s]}"
        .formatted(reading(18, percent), spots);
  }

  private static String corner(String keys) {
    return "{id: corner, kind: external corner, temperature_factor: 0.7%s}".formatted(keys);
  }

  private static Finding mould(ChangeResult result) {
    return result.findings().stream()
        .filter(f -> f.id().equals("change.mould"))
        .findFirst()
        .orElseThrow();
  }

  /** At 5 °C outdoors and 18 °C indoors a factor of 0.7 is 14.1 °C; dew points 15.0 and 9.0 °C. */
  @Test
  void a_surface_is_told_against_the_dew_point_of_each_visit() {
    ColdSpotChange change =
        compare(spots(83, corner("")), spots(55.5, corner(""))).coldSpots().get(0);
    assertThat(change.marginBefore().orElseThrow().likely()).isCloseTo(14.1 - 15.1, within(0.1));
    assertThat(change.marginAfter().orElseThrow().likely()).isCloseTo(14.1 - 9.0, within(0.1));
    assertThat(change.said())
        .startsWith("Surface 1.0 K below the dew point before, 5.1 K above after.");
    assertThat(change.marginAfter().orElseThrow().working().inputs())
        .hasSize(2)
        .allMatch(i -> i.figure().isEmpty());
  }

  @Test
  void a_surface_without_a_dew_point_at_both_visits_says_so() {
    String dry = "- {id: bed, use: bedroom, cold_spots: [%s]}".formatted(corner(""));
    assertThat(compare(spots(60, corner("")), dry).coldSpots().get(0).said())
        .startsWith("Surface and dew point were not both known");
    assertThat(compare(dry, spots(60, corner(""))).coldSpots().get(0).marginAfter()).isPresent();
  }

  @Test
  void a_place_of_one_visit_is_left_out() {
    assertThat(compare(spots(60, ""), spots(60, corner(""))).coldSpots()).isEmpty();
  }

  @Test
  void mould_is_summed_over_places_known_at_both_visits() {
    String before =
        corner(", mould_area: 0.15 m2") + ", {id: sill, kind: sill, mould_area: 0.5 m2}";
    String after =
        corner(", mould_seen: none") + ", {id: lintel, kind: lintel, mould_area: 0.9 m2}";
    ChangeResult change = compare(spots(60, before), spots(60, after));
    assertThat(change.mould().orElseThrow().before().likely()).isEqualTo(0.15);
    assertThat(change.mould().orElseThrow().after().likely()).isZero();
    assertThat(change.coldSpots().get(0).said())
        .endsWith("Mould on 0.15 m² before, 0.00 m² after.");
    assertThat(change.mould().orElseThrow().before().working().inputs()).hasSize(1);
    assertThat(change.coldSpots().get(0).mould().orElseThrow().before().working().formula())
        .isEqualTo("as seen");
    assertThat(mould(change).verdict()).isEqualTo(Verdict.MEETS);
    assertThat(mould(change).because()).contains("Cleaning does that too");
  }

  private static Finding mould(String before, String after) {
    return mould(compare(spots(60, corner(before)), spots(60, corner(after))));
  }

  /** Areas are estimated to 30 %: 0.15 and 0.20 m² may be the same, 0.15 and 0.60 m² not. */
  @Test
  void mould_is_smaller_or_larger_only_beyond_the_error_of_an_estimate() {
    assertThat(mould(", mould_area: 0.15 m2", ", mould_area: 0.20 m2").verdict())
        .isEqualTo(Verdict.UNKNOWN);
    assertThat(mould(", mould_area: 0.15 m2", ", mould_area: 0.20 m2").because())
        .contains("much the same", "plus or minus 0.08 m²");
    assertThat(mould(", mould_area: 0.15 m2", ", mould_area: 0.60 m2").verdict())
        .isEqualTo(Verdict.SHORT);
    assertThat(mould(", mould_seen: none", ", mould_area: 0.15 m2").verdict())
        .isEqualTo(Verdict.SHORT);
    assertThat(mould(", mould_area: 0.15..0.16 m2", ", mould_area: 0.18..0.20 m2").verdict())
        .isEqualTo(Verdict.SHORT);
    assertThat(mould(", mould_seen: none", ", mould_seen: none").because())
        .contains("either visit");
    assertThat(mould(", mould_seen: none", ", mould_seen: none").verdict())
        .isEqualTo(Verdict.MEETS);
  }

  @Test
  void mould_without_an_area_cannot_be_compared() {
    String specks = corner(", mould_seen: specks");
    Finding found = mould(compare(spots(60, specks), spots(60, corner(", mould_seen: none"))));
    assertThat(found.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(found.settledBy().orElseThrow()).contains("how large the area with mould is");
  }

  private static List<FanChange> fans(String before, String after) {
    return compare(
            "- {id: bath, use: bathroom, fans: [%s]}".formatted(before),
            "- {id: bath, use: bathroom, fans: [%s]}".formatted(after))
        .fans();
  }

  @Test
  void a_fan_is_compared_by_its_flow_and_how_it_is_known() {
    FanChange change =
        fans(
                "{id: f, kind: intermittent extract, declared_flow: 15 l/s}",
                "{id: f, kind: intermittent extract, measured_flow: {value: 20 l/s, instrument: hood}}")
            .get(0);
    assertThat(change.said())
        .isEqualTo(
            "Before: intermittent extract, 15.0 l/s declared, not measured."
                + " After: intermittent extract, 20.0 l/s measured.");
    assertThat(change.flowAfter().orElseThrow().value().low() * 1000).isCloseTo(19, within(1e-9));
    assertThat(change.flowAfter().orElseThrow().working().formula()).isEqualTo("as measured");
    assertThat(change.flowBefore().orElseThrow().working().formula())
        .isEqualTo("as declared by the maker");
  }

  @Test
  void a_fan_that_does_not_work_moves_nothing() {
    FanChange change =
        fans(
                "{id: f, kind: fitted but not working, declared_flow: 15 l/s}",
                "{id: f, name: New fan, kind: intermittent extract}")
            .get(0);
    assertThat(change.flowBefore().orElseThrow().likely()).isZero();
    assertThat(change.said()).isEqualTo("Before: fitted but not working. After: flow not known.");
  }

  @Test
  void fans_that_came_and_went_are_listed() {
    List<FanChange> changes =
        fans(
            "{id: old, kind: passive stack}",
            "{id: new, kind: continuous extract, declared_flow: 8 l/s}");
    assertThat(changes).extracting(FanChange::id).containsExactly("new", "old");
    assertThat(changes.get(0).said()).startsWith("Before: not there.");
    assertThat(changes.get(1).said()).endsWith("After: not there.");
  }

  @Test
  void works_between_the_visits_are_listed_oldest_first() {
    String events =
        "{date: 2025-02-11, event: investigated}, {date: 2025-03-20, event: works completed},"
            + " {date: 2025-03-01, event: works started}, {date: 2026-01-23, event: reported}";
    String rooms = "- {id: bath, use: bathroom}";
    ChangeResult change =
        compare(new Visit(OUTDOOR, rooms, events), new Visit(OUTDOOR, rooms, events));
    assertThat(change.between())
        .extracting(TimelineEvent::date)
        .extracting(Object::toString)
        .containsExactly("2025-03-01", "2025-03-20");
    assertThat(compare(visit(OUTDOOR, rooms), visit(OUTDOOR, rooms)).between()).isEmpty();
  }

  private static SameAirChange sameAir(String before, String after) {
    return compare(before, after).coldSpots().get(0).sameAir().orElseThrow();
  }

  /**
   * At 5 °C and 85 % outdoors (741 Pa) and 18 °C in the room a factor of 0.7 is 14.1 °C, ps 1608
   * Pa. Readings at 18 °C (ps 2062.7 Pa) with 697.5 Pa outdoors: 60 % is an excess of 540 Pa.
   */
  @Test
  void a_surface_is_brought_to_the_same_air() {
    SameAirChange drier = sameAir(spots(60, corner("")), spots(40, corner("")));
    assertThat(drier.outdoor().likely()).isEqualTo(5);
    assertThat(drier.indoor().likely()).isCloseTo(18, within(1e-9));
    assertThat(drier.humidityBefore().likely())
        .isCloseTo((741.4 + 0.6 * 2062.7 - 697.5) / 1608.4, within(0.001));
    assertThat(drier.humidityAfter().likely())
        .isCloseTo((741.4 + 0.4 * 2062.7 - 697.5) / 1608.4, within(0.001));
    assertThat(drier.judgement().shown()).isEqualTo(Shown.FELL);
    assertThat(drier.read()).isFalse();
    assertThat(drier.change().working().inputs()).hasSize(2);
    assertThat(drier.humidityAfter().working().inputs()).hasSize(5);
    assertThat(drier.indoor().working().inputs()).hasSize(2);
    assertThat(drier.outdoor().working().sources()).hasSize(1);
  }

  /** Only the factor: 0.7 becomes 0.9, read with 1 K at 13 K between indoors and outdoors. */
  @Test
  void a_warmer_surface_in_the_same_air_is_drier() {
    String cold = spots(60, read(14.1));
    String warm = spots(60, read(16.7));
    SameAirChange warmer = sameAir(cold, warm);
    assertThat(warmer.read()).isTrue();
    assertThat(warmer.factorBefore().likely()).isCloseTo(0.7, within(1e-9));
    assertThat(warmer.factorAfter().likely()).isCloseTo(0.9, within(1e-9));
    assertThat(warmer.judgement().shown()).isEqualTo(Shown.FELL);
    SameAirChange hardly = sameAir(cold, spots(60, read(14.3)));
    assertThat(hardly.judgement().doubt()).contains(Doubt.WITHIN_ERROR);
    assertThat(hardly.judgement().criterion()).contains("percentage points");
    assertThat(sameAir(cold, spots(60, corner(""))).read()).isFalse();
  }

  private static String read(double surface) {
    return "{id: corner, kind: external corner, readings: [{surface: %s C, air: 18 C, outdoor: 5 C}]}"
        .formatted(surface);
  }

  /** A factor that nobody measured errs alike at both visits; one of each visit errs on its own. */
  @Test
  void the_error_of_one_unmeasured_factor_counts_once() {
    SameAirChange same = sameAir(spots(60, corner("")), spots(55, corner("")));
    SameAirChange two =
        sameAir(spots(60, corner("")), spots(55, corner("").replace("0.7", "0.7000001")));
    assertThat(two.change().likely()).isCloseTo(same.change().likely(), within(1e-5));
    assertThat(width(two)).isGreaterThan(2 * width(same));
  }

  private static double width(SameAirChange same) {
    return same.change().value().high() - same.change().value().low();
  }

  @Test
  void without_outdoor_readings_nothing_is_shown_of_a_surface() {
    ChangeResult result =
        compare(visit("", spots(80, corner(""))), visit("", spots(40, corner(""))));
    assertThat(result.coldSpots().get(0).sameAir().orElseThrow().judgement().doubt())
        .contains(Doubt.OUTDOORS_NOT_READ);
  }

  /** At 20 °C and more the excess of a home says nothing of 5 °C; a visit in July is such a one. */
  @Test
  void a_visit_in_summer_is_not_carried_to_winter() {
    String summer = OUTDOOR.replace("5 C", "24 C");
    for (String then : List.of(OUTDOOR, summer)) {
      ColdSpotChange change =
          compare(visit(then, spots(60, corner(""))), visit(summer, spots(80, corner(""))))
              .coldSpots()
              .get(0);
      assertThat(change.sameAir()).isEmpty();
      assertThat(change.said()).contains("too warm outdoors at one of the visits");
    }
    ColdSpotChange late =
        compare(visit(summer, spots(60, corner(""))), visit(OUTDOOR, spots(60, corner(""))))
            .coldSpots()
            .get(0);
    assertThat(late.sameAir()).isEmpty();
  }

  private static final String FAN =
      "{id: f, kind: intermittent extract, measured_flow: {value: %s l/s, instrument: hood}}";

  /** 5 % at each visit: 20 and 20.5 l/s may be the same, 20 and 24 l/s not. */
  @Test
  void a_flow_rose_only_beyond_the_error_of_both_hoods() {
    FanChange hardly = fans(FAN.formatted(20), FAN.formatted(20.5)).get(0);
    assertThat(hardly.judgement().doubt()).contains(Doubt.WITHIN_ERROR);
    assertThat(hardly.judgement().criterion()).contains("plus or minus 1.4 l/s");
    FanChange rose = fans(FAN.formatted(20), FAN.formatted(24)).get(0);
    assertThat(rose.judgement().shown()).isEqualTo(Shown.ROSE);
    assertThat(rose.change().orElseThrow().likely()).isCloseTo(0.004, within(1e-12));
    assertThat(fans(FAN.formatted(24), FAN.formatted(20)).get(0).judgement().shown())
        .isEqualTo(Shown.FELL);
  }

  @Test
  void what_is_only_declared_is_no_change_and_a_new_fan_has_none_before() {
    String declared = "{id: f, kind: intermittent extract, declared_flow: 15 l/s}";
    FanChange half = fans(declared, FAN.formatted(20)).get(0);
    assertThat(half.judgement().doubt()).contains(Doubt.NOT_MEASURED);
    assertThat(half.change()).isEmpty();
    assertThat(fans(FAN.formatted(20), declared).get(0).judgement().doubt())
        .contains(Doubt.NOT_MEASURED);
    FanChange fresh = fans("", FAN.formatted(20)).get(0);
    assertThat(fresh.judgement().doubt()).contains(Doubt.AT_ONE_VISIT);
    assertThat(fresh.kindBefore()).isEmpty();
    assertThat(fans(FAN.formatted(20), "").get(0).judgement().doubt()).contains(Doubt.AT_ONE_VISIT);
  }

  private static List<RecoveryChange> recovery(String before, String after) {
    String unit = "- {id: bed, use: bedroom, fans: [{id: hr, kind: simultaneous heat recovery%s}]}";
    return compare(unit.formatted(before), unit.formatted(after)).recovery();
  }

  private static String test(double supply) {
    return ", heat_recovery_tests: [{outdoor: 0 C, indoor: 20 C, supply: %s C, instrument: fine}]"
        .formatted(supply);
  }

  @Test
  void heat_recovery_is_compared_where_it_was_measured_twice() {
    RecoveryChange change = recovery(test(16), test(12)).get(0);
    assertThat(change.before().likely()).isCloseTo(0.80, within(1e-9));
    assertThat(change.after().likely()).isCloseTo(0.60, within(1e-9));
    assertThat(change.judgement().shown()).isEqualTo(Shown.FELL);
    assertThat(change.before().working().formula()).isNotBlank();
    assertThat(recovery(test(16), test(16)).get(0).judgement().doubt())
        .contains(Doubt.WITHIN_ERROR);
    assertThat(recovery(test(16), "")).isEmpty();
    assertThat(recovery("", test(16))).isEmpty();
  }
}
