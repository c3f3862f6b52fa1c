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
        .isEqualTo("Surface 1.0 K below the dew point before, 5.1 K above after.");
    assertThat(change.marginAfter().orElseThrow().working().inputs()).hasSize(1);
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
    assertThat(change.mouldBefore().orElseThrow().likely()).isEqualTo(0.15);
    assertThat(change.mouldAfter().orElseThrow().likely()).isZero();
    assertThat(change.coldSpots().get(0).said())
        .endsWith("Mould on 0.15 m² before, 0.00 m² after.");
    assertThat(change.mouldBefore().orElseThrow().working().inputs()).hasSize(1);
    assertThat(change.coldSpots().get(0).mouldBefore().orElseThrow().working().formula())
        .isEqualTo("as seen");
    assertThat(mould(change).verdict()).isEqualTo(Verdict.MEETS);
    assertThat(mould(change).because()).contains("Cleaning does that too");
  }

  @Test
  void mould_that_did_not_shrink_is_short_and_none_at_all_is_enough() {
    String patch = corner(", mould_area: 0.15 m2");
    assertThat(mould(compare(spots(60, patch), spots(60, patch))).verdict())
        .isEqualTo(Verdict.SHORT);
    String clean = corner(", mould_seen: none");
    Finding none = mould(compare(spots(60, clean), spots(60, clean)));
    assertThat(none.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(none.because()).contains("either visit");
    assertThat(mould(compare(spots(60, clean), spots(60, patch))).verdict())
        .isEqualTo(Verdict.SHORT);
  }

  @Test
  void mould_without_an_area_cannot_be_compared() {
    String specks = corner(", mould_seen: specks");
    Finding found = mould(compare(spots(60, specks), spots(60, corner(", mould_seen: none"))));
    assertThat(found.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(found.settledBy().orElseThrow()).contains("mould_area");
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
        .isEqualTo("Before: 15 l/s declared, not measured. After: 20 l/s measured.");
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
}
