package org.drysill.assess.ventilation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.assess.Verdict;
import org.drysill.reference.rules.Counts;
import org.drysill.reference.rules.ExtractMode;
import org.drysill.reference.rules.RoomGroup;
import org.drysill.reference.rules.Terminal;
import org.junit.jupiter.api.Test;

/** What rule sets ask of single rooms, and how the home stands to what they ask of it. */
class RoomRulesTest {
  private static final String DWELLING =
      "floor_area: 80, volume: 200, storeys: 1, bedrooms: 3, occupants: {adults: 2},"
          + " airtightness: {n50: 9, basis: measured}";
  private static final String ROOMS =
      """
      - {id: kitchen, use: kitchen, floor_area: 10, height: 2.4, windows: [{id: w, background_ventilator: 0 mm2}]}
      - {id: bath, use: bathroom, floor_area: 4, height: 2.4, external_wall: no}
      """;
  private static final VentilationResult ENGLAND =
      VentilationFixtures.assess("england", DWELLING, ROOMS);

  private static RoomRule rule(VentilationResult result, String id) {
    return result.roomRules().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  private static List<RoomRule.Ask> asks(RoomRule rule, RoomGroup room, ExtractMode mode) {
    return rule.asks().stream().filter(a -> a.room() == room && a.mode() == mode).toList();
  }

  /** 60 l/s are 9 changes an hour of a kitchen of 24 m³ and 1.08 of a home of 200 m³. */
  @Test
  void aFansRateIsToldAsAirChangesOfItsRoomAndOfTheHome() {
    RoomRule.Ask ask =
        asks(rule(ENGLAND, "england"), RoomGroup.KITCHEN, ExtractMode.INTERMITTENT).stream()
            .filter(a -> a.terminal().filter(t -> t == Terminal.ELSEWHERE).isPresent())
            .findFirst()
            .orElseThrow();
    assertThat(ask.flowM3S().orElseThrow()).isCloseTo(0.060, within(1e-12));
    assertThat(ask.roomAirChange().orElseThrow()).isCloseTo(9, within(1e-9));
    assertThat(ask.homeAirChange().orElseThrow()).isCloseTo(1.08, within(1e-9));
    assertThat(ask.printedAirChange()).isEmpty();
  }

  @Test
  void theGoverningSetStandsFirstAndThoseThatAskNothingOfARoomAreLeftOut() {
    assertThat(ENGLAND.roomRules().get(0).id()).isEqualTo("england");
    assertThat(ENGLAND.roomRules()).filteredOn(RoomRule::governing).hasSize(1);
    assertThat(ENGLAND.roomRules()).extracting(RoomRule::id).doesNotContain("half-air-change");
    assertThat(rule(ENGLAND, "england").airing()).contains(4.0);
    assertThat(rule(ENGLAND, "scotland").airing()).isEmpty();
    assertThat(rule(ENGLAND, "england").sources()).isNotEmpty();
  }

  @Test
  void airChangesOfARoomThatIsNotThereGiveNoFlow() {
    RoomRule.Ask wc =
        asks(rule(ENGLAND, "scotland"), RoomGroup.SANITARY, ExtractMode.INTERMITTENT).get(0);
    assertThat(wc.printedAirChange()).contains(3.0);
    assertThat(wc.flowM3S()).isEmpty();
    assertThat(wc.roomAirChange()).isEmpty();
    assertThat(wc.homeAirChange()).isEmpty();
    RoomRule.Ask kitchen =
        asks(rule(ENGLAND, "ashrae-62-2"), RoomGroup.KITCHEN, ExtractMode.CONTINUOUS).get(0);
    assertThat(kitchen.flowM3S().orElseThrow()).isCloseTo(5 * 24.0 / 3600, within(1e-9));
  }

  @Test
  void rowsForInnerRoomsHoldWhereTheRoomHasNoOutsideWall() {
    RoomRule england = rule(ENGLAND, "england");
    assertThat(asks(england, RoomGroup.BATHROOM, ExtractMode.INTERMITTENT)).hasSize(2);
    RoomRule outside =
        rule(
            VentilationFixtures.assess(
                "england", DWELLING, ROOMS.replace("external_wall: no", "external_wall: yes")),
            "england");
    assertThat(asks(outside, RoomGroup.BATHROOM, ExtractMode.INTERMITTENT)).hasSize(1);
  }

  /** Leaks of 9 changes at 50 Pa give some 15 to 65 l/s here; no fan runs. */
  @Test
  void eachRateIsHeldAgainstTheAirThatItCounts() {
    RuleComparison all = VentilationFixtures.comparison(ENGLAND, "england");
    assertThat(all.counts()).isEqualTo(Counts.ALL_OUTDOOR_AIR);
    assertThat(all.verdict()).isEqualTo(ENGLAND.wholeHome().verdict());
    RuleComparison fans = VentilationFixtures.comparison(ENGLAND, "denmark");
    assertThat(fans.counts()).isEqualTo(Counts.FANS_ONLY);
    assertThat(fans.verdict()).isEqualTo(Verdict.SHORT);
  }

  @Test
  void whatIsDoubtfulOrCannotBeComputedIsNotTold() {
    assertThat(VentilationFixtures.comparison(ENGLAND, "wales").verdict())
        .isEqualTo(Verdict.UNKNOWN);
    assertThat(VentilationFixtures.comparison(ENGLAND, "ashrae-62-2/credited").verdict())
        .isEqualTo(Verdict.UNKNOWN);
    VentilationResult tight =
        VentilationFixtures.assess("england", DWELLING.replace("n50: 9", "n50: 0.3"), ROOMS);
    assertThat(VentilationFixtures.comparison(tight, "england").verdict()).isEqualTo(Verdict.SHORT);
    assertThat(VentilationFixtures.comparison(tight, "wales").verdict()).isEqualTo(Verdict.UNKNOWN);
  }
}
