package org.drysill.assess.ventilation.rooms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.assess.ventilation.VentilationResult;
import org.junit.jupiter.api.Test;

/** The air of rooms in homes that can be looked through. */
class RoomAirTest {
  private static final String DWELLING =
      "floor_area: 60, storeys: 1, bedrooms: 2, airtightness: {n50: 8, basis: measured}";

  /** A hall with three doors, a fan in the bathroom. */
  private static final String FLAT =
      """
      - {id: hall, use: hall, floor_area: 6, doors: [{to: living, undercut: 8 mm, width: 760 mm}, {to: bath, undercut: 4 mm, width: 760 mm}]}
      - {id: living, use: living, floor_area: 30, windows: [{id: w, background_ventilator: 4000 mm2}]}
      - {id: bed, use: bedroom, floor_area: 20, doors: [{to: hall}]}
      - {id: bath, use: bathroom, floor_area: 4, external_wall: no, fans: [{id: fan, kind: continuous extract, run: continuous, measured_flow: 12 l/s}]}
      """;

  private static VentilationResult assess(String rooms) {
    return VentilationFixtures.assess("england", DWELLING, rooms);
  }

  private static RoomBalance room(RoomAirResult air, String id) {
    return air.room(id).orElseThrow();
  }

  private static DoorAir door(RoomAirResult air, String a, String b) {
    return air.doors().stream()
        .filter(d -> List.of(d.from(), d.to()).containsAll(List.of(a, b)))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> assumed(RoomAirResult air) {
    return air.assumptions().stream().map(Assumption::id).toList();
  }

  @Test
  void everyRoomTakesInWhatItGivesAndTheRoomsSumUpToTheHome() {
    VentilationResult result = assess(FLAT);
    RoomAirResult air = result.rooms();
    assertThat(air.rooms())
        .allSatisfy(r -> assertThat(r.inM3S()).isCloseTo(r.outM3S(), within(1e-9)));
    double in = air.rooms().stream().mapToDouble(r -> r.supplyM3S() + r.leaksInM3S()).sum();
    double out = air.rooms().stream().mapToDouble(r -> r.extractM3S() + r.leaksOutM3S()).sum();
    assertThat(in).isCloseTo(out, within(1e-9));
    assertThat(in).isCloseTo(result.provided().wholeHome().likely(), within(1e-9));
  }

  /**
   * Without fans and with air for every crack the pressure of the weather is that at which half of
   * the leaks pass n50/20, 50 Pa (2/20)^(1/0.65) = 1.447 Pa, however many ventilators there are:
   * the sum for the home and its rooms reckon with one and the same pressure.
   */
  @Test
  void ventilatorsAndLeaksOfTheHomeAndOfItsRoomsMeetOnePressure() {
    String living =
        "- {id: living, use: living, floor_area: 60, windows: [{id: w, background_ventilator: %s}]}";
    assertThat(assess(living.formatted("0 mm2")).rooms().weatherPa())
        .isCloseTo(1.447, within(0.001));
    assertThat(assess(living.formatted("9000 mm2")).rooms().weatherPa())
        .isCloseTo(1.447, within(0.001));
  }

  @Test
  void aFanDrawsTowardsItsRoomFromAllOthers() {
    RoomAirResult air = assess(FLAT).rooms();
    assertThat(room(air, "bath").extractM3S()).isCloseTo(0.012, within(1e-12));
    assertThat(room(air, "bath").fromRoomsM3S()).isGreaterThan(0.008);
    assertThat(door(air, "hall", "bath").to()).isEqualTo("bath");
    assertThat(door(air, "living", "hall").to()).isEqualTo("hall");
    assertThat(room(air, "bath").pressurePa()).isLessThan(room(air, "hall").pressurePa());
    assertThat(room(air, "hall").pressurePa()).isNegative();
  }

  @Test
  void thePressureAcrossAClosedDoorFollowsFromItsFlow() {
    Figure pressure = door(assess(FLAT).rooms(), "hall", "bath").pressureAllRunning();
    assertThat(pressure.unit()).isEqualTo(Unit.PASCAL);
    assertThat(pressure.id()).isEqualTo("door.hall.bath.pressure");
    double flow = pressure.working().inputs().get(0).value().likely();
    double area = pressure.working().inputs().get(1).value().likely();
    // 4 mm under 760 mm, and 6000 mm² of other edges.
    assertThat(area).isCloseTo(0.00904, within(1e-12));
    assertThat(pressure.likely()).isCloseTo(0.6 * Math.pow(flow / (0.61 * area), 2), within(2e-3));
    assertThat(pressure.value().low()).isLessThanOrEqualTo(pressure.likely());
    assertThat(pressure.value().high()).isGreaterThanOrEqualTo(pressure.likely());
  }

  @Test
  void leaksGoByVolumeInnerRoomsAtAQuarterAndVentilatorsToTheirRoom() {
    String without = FLAT.replace("4000 mm2", "0 mm2");
    RoomAirResult air =
        assess(without.replace("kind: continuous extract", "kind: fitted but not working")).rooms();
    double perArea = room(air, "bed").leaksInM3S() / 20;
    assertThat(room(air, "living").leaksInM3S()).isCloseTo(30 * perArea, within(1e-9));
    assertThat(room(air, "bath").leaksInM3S()).isCloseTo(4 * perArea / 4, within(1e-9));
    RoomAirResult open = assess(FLAT).rooms();
    assertThat(room(open, "living").leaksInM3S() / 30)
        .isGreaterThan(1.1 * room(open, "bed").leaksInM3S() / 20);
    // A room with a window is none without outside wall, whatever else was written.
    RoomAirResult seen =
        assess(without.replace("external_wall: no", "external_wall: no, windows: [{id: v}]"))
            .rooms();
    assertThat(room(seen, "bath").leaksInM3S()).isGreaterThan(3 * room(air, "bath").leaksInM3S());
  }

  @Test
  void outdoorAirIsAFigureOverTheLeastAndTheMostWithItsAirChange() {
    RoomBalance bed = room(assess(FLAT).rooms(), "bed");
    Figure outdoor = bed.outdoorAir().orElseThrow();
    assertThat(outdoor.likely()).isCloseTo(bed.leaksInM3S(), within(1e-12));
    assertThat(outdoor.value().low()).isLessThan(outdoor.likely());
    assertThat(outdoor.working().inputs()).hasSize(2);
    Figure change = bed.airChange().orElseThrow();
    assertThat(change.likely()).isCloseTo(outdoor.likely() * 3600 / 48, within(1e-9));
    assertThat(change.working().formula()).isEqualTo("n = q / V");
  }

  @Test
  void gapsThatWereNotMeasuredAreAssumedAloud() {
    RoomAirResult air = assess(FLAT).rooms();
    assertThat(assumed(air))
        .containsExactly(
            "ventilation.rooms.leaks",
            "ventilation.rooms.doors_closed",
            "ventilation.rooms.door_gaps");
    assertThat(air.assumptions().get(2).about()).isEqualTo("one door whose gap was not measured");
    assertThat(door(air, "bed", "hall").recorded()).isTrue();
  }

  @Test
  void ofADoorThatBothRoomsListTheEntryWithAGapCounts() {
    String both =
        """
        - {id: a, use: living, floor_area: 20, doors: [{to: b}, {to: a}, {to: cellar}]}
        - {id: b, use: bedroom, floor_area: 20, doors: [{to: a, undercut: 10 mm, width: 800 mm}]}
        - {id: cellar, use: cellar, floor_area: 20}
        """;
    RoomAirResult air = assess(both).rooms();
    assertThat(air.doors()).hasSize(1);
    assertThat(area(air.doors().get(0))).isCloseTo(0.014, within(1e-12));
    RoomAirResult turned =
        assess(both.replace("{to: b}", "{to: b, undercut: 2 mm, width: 800 mm}")).rooms();
    assertThat(area(turned.doors().get(0))).isCloseTo(0.0076, within(1e-12));
    assertThat(assumed(air)).doesNotContain("ventilation.rooms.door_gaps");
  }

  private static double area(DoorAir door) {
    return door.pressureAllRunning().working().inputs().get(1).value().likely();
  }

  @Test
  void roomsWithoutAnyDoorOpenIntoTheHallThatIsThere() {
    RoomAirResult air =
        assess(
                """
                - {id: living, use: living, floor_area: 30}
                - {id: hall, use: hall, floor_area: 6}
                - {id: landing, use: hall, floor_area: 6, storey: 1}
                """)
            .rooms();
    assertThat(door(air, "living", "hall").recorded()).isFalse();
    assertThat(door(air, "landing", "hall").open()).isTrue();
    assertThat(assumed(air))
        .contains("ventilation.rooms.doors_not_listed", "ventilation.rooms.open_ways");
  }

  @Test
  void whereNoHallIsListedOneIsTakenForGranted() {
    RoomAirResult air =
        assess(
                """
                - {id: living, use: living, floor_area: 30}
                - {id: kitchen, use: kitchen, floor_area: 8, doors: [{to: store}]}
                - {id: store, use: store, floor_area: 2}
                """)
            .rooms();
    RoomBalance hall = air.rooms().get(3);
    assertThat(hall.name()).isEqualTo("Hall, not surveyed");
    assertThat(hall.hall()).isTrue();
    assertThat(hall.leaksInM3S()).isZero();
    assertThat(hall.outdoorAir()).isEmpty();
    assertThat(hall.floorAreaM2()).isZero();
    assertThat(air.doors()).hasSize(3);
    assertThat(door(air, "", "kitchen").recorded()).isFalse();
    assertThat(air.assumptions())
        .anyMatch(a -> a.about().equals("2 doors that the survey does not list"));
  }

  @Test
  void hallsThatListEachOtherWithoutAGapAreOpen() {
    RoomAirResult air =
        assess(
                """
                - {id: hall, use: hall, floor_area: 6, doors: [{to: landing}]}
                - {id: landing, use: hall, floor_area: 6, storey: 1}
                """)
            .rooms();
    assertThat(air.doors().get(0).open()).isTrue();
    assertThat(air.doors().get(0).recorded()).isFalse();
    assertThat(air.assumptions()).anyMatch(a -> a.about().equals("one way between halls"));
  }

  @Test
  void aHomeOfOneRoomAssumesNothingAndAHomeOfNoneHasNoAirOfRooms() {
    RoomAirResult one = assess("- {id: studio, use: living, floor_area: 30}").rooms();
    assertThat(one.rooms()).hasSize(1);
    assertThat(one.assumptions()).isEmpty();
    RoomAirResult none = assess("- {id: loft, use: loft, floor_area: 30}").rooms();
    assertThat(none.rooms()).isEmpty();
    assertThat(none.room("loft")).isEmpty();
  }

  @Test
  void aFanInTheLoftBlowsIntoTheHallOrElseTheLargestRoom() {
    String loft =
        """
        - {id: loft, use: loft, floor_area: 30, fans: [{id: input, kind: positive input, run: continuous, measured_flow: 20 l/s}]}
        - {id: bed, use: bedroom, floor_area: 10, doors: [{to: hall}]}
        - {id: hall, use: hall, floor_area: 5}
        """;
    RoomAirResult air = assess(loft).rooms();
    assertThat(room(air, "hall").supplyM3S()).isCloseTo(0.02, within(1e-12));
    assertThat(assumed(air)).contains("ventilation.rooms.outside.input");
    RoomAirResult noHall = assess(loft.replace("use: hall", "use: store")).rooms();
    assertThat(room(noHall, "bed").supplyM3S()).isCloseTo(0.02, within(1e-12));
  }

  @Test
  void aDuctedSystemSuppliesRoomsByAreaAndExtractsFromWetRoomsAlike() {
    RoomAirResult air =
        assess(
                FLAT.replace("kind: continuous extract", "kind: balanced heat recovery")
                    + "- {id: kitchen, use: kitchen, floor_area: 8, doors: [{to: hall}]}\n")
            .rooms();
    assertThat(room(air, "living").supplyM3S()).isCloseTo(0.012 * 0.6, within(1e-12));
    assertThat(room(air, "bed").supplyM3S()).isCloseTo(0.012 * 0.4, within(1e-12));
    assertThat(room(air, "bath").extractM3S()).isCloseTo(0.006, within(1e-12));
    assertThat(room(air, "kitchen").extractM3S()).isCloseTo(0.006, within(1e-12));
    assertThat(assumed(air)).contains("ventilation.rooms.ducted.fan");
    RoomAirResult store =
        assess(
                "- {id: plant, use: store, floor_area: 8, fans: [{id: fan, kind: balanced heat"
                    + " recovery, run: continuous, measured_flow: 12 l/s}]}")
            .rooms();
    assertThat(room(store, "plant").supplyM3S()).isCloseTo(0.012, within(1e-12));
  }
}
