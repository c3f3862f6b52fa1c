package org.drysill.assess.ventilation.adequacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;

/** A fan behind a closed door; cracks around a leaf 200 to 2000 mm², limit 10 Pa: assumptions. */
class DoorPressuresTest {
  private static VentilationResult home(String door, String fans) {
    return VentilationFixtures.assess(
        "england",
        "floor_area: 84",
        "- {id: hall, use: hall}\n- {id: bath, use: bathroom, doors: ["
            + door
            + "], fans: ["
            + fans
            + "]}");
  }

  private static String fan(String flow) {
    return "{id: fan, kind: intermittent extract, measured_flow: {value: "
        + flow
        + ", instrument: hood}}";
  }

  private static Finding finding(String door, String flow) {
    return VentilationFixtures.finding(home(door, fan(flow)), "room.bath.door_pressure");
  }

  /** 0.6·(q / (0.61·A))² by hand: 9.5 ± 5 % l/s through 2 mm · 700 mm and the cracks. */
  @Test
  void a_tight_door_holds_the_air_back() {
    Finding finding = finding("{to: hall, undercut: 2 mm, width: 700 mm}", "9.5 l/s");
    Range pressure = finding.provided().orElseThrow().value();
    assertThat(pressure.likely())
        .isCloseTo(0.6 * Math.pow(0.0095 / (0.61 * 0.0025), 2), within(1e-9));
    assertThat(pressure.low())
        .isCloseTo(0.6 * Math.pow(0.0095 * 0.95 / (0.61 * 0.0034), 2), within(1e-9));
    assertThat(pressure.high())
        .isCloseTo(0.6 * Math.pow(0.0095 * 1.05 / (0.61 * 0.0016), 2), within(1e-9));
    assertThat(finding.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(finding.settledBy()).isEmpty();
    assertThat(finding.because()).contains("too little air");
  }

  @Test
  void a_door_with_the_published_gap_lets_the_usual_extract_through() {
    Finding finding = finding("{to: hall, undercut: 10 mm, width: 760 mm}", "15 l/s");
    assertThat(finding.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding.because()).contains("its door");
  }

  @Test
  void a_gap_that_nobody_measured_leaves_it_open_and_is_asked_for() {
    Finding finding = finding("{to: hall}", "15 l/s");
    assertThat(finding.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding.settledBy().orElseThrow()).contains("Measure the gap");
    Finding measured = finding("{to: hall, undercut: 6 mm, width: 700 mm}", "15 l/s");
    assertThat(measured.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(measured.settledBy().orElseThrow()).contains("door open and shut");
  }

  @Test
  void a_door_that_both_rooms_list_counts_once_with_its_gap_and_several_add() {
    String rooms =
        "- {id: hall, use: hall, doors: [{to: bath, undercut: 10 mm, width: 760 mm}]}\n"
            + "- {id: bed, use: bedroom, doors: [{to: bath, undercut: 10 mm, width: 760 mm}]}\n"
            + "- {id: bath, use: bathroom, doors: [{to: hall}], fans: ["
            + fan("15 l/s")
            + "]}";
    Finding finding =
        VentilationFixtures.finding(
            VentilationFixtures.assess("england", "floor_area: 84", rooms),
            "room.bath.door_pressure");
    assertThat(finding.provided().orElseThrow().likely())
        .isCloseTo(0.6 * Math.pow(0.015 / (0.61 * (0.0152 + 0.0022)), 2), within(1e-9));
    assertThat(finding.because()).contains("its doors");
  }

  @Test
  void only_extract_behind_a_door_to_a_heated_room_is_told() {
    assertThat(home("", fan("15 l/s")).doorPressure()).isEmpty();
    assertThat(home("{to: hall, undercut: 2 mm}", "").doorPressure()).isEmpty();
    String balanced =
        "{id: fan, kind: simultaneous heat recovery, measured_flow: {value: 15 l/s, instrument: hood}}";
    assertThat(home("{to: hall, undercut: 2 mm}", balanced).doorPressure()).isEmpty();
    assertThat(home("{to: bath, undercut: 2 mm}", fan("15 l/s")).doorPressure()).isEmpty();
    VentilationResult cellar =
        VentilationFixtures.assess(
            "england",
            "floor_area: 84",
            "- {id: cellar, use: cellar, doors: [{to: bath}]}\n- {id: bath, use: bathroom, doors:"
                + " [{to: cellar}], fans: ["
                + fan("15 l/s")
                + "]}");
    assertThat(cellar.doorPressure()).isEmpty();
  }
}
