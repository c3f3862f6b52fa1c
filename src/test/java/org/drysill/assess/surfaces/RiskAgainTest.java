package org.drysill.assess.surfaces;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.physics.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RiskAgainTest {
  private static final String PLACES =
      """
      cold_spots:
        - {id: corner, kind: external corner}
        - {id: plane, kind: wall, u_value: 1.8 W/m2K}
      windows:
        - {id: north, glazing: single}
        - {id: south, u_value: 2.8 W/m2K}
      """;

  @ParameterizedTest
  @ValueSource(doubles = {0, 250, 500, 810, 1400})
  void findsTheMonthsThatTheWholeAssessmentFinds(double excess) {
    Home home = SurfaceFixtures.home("", PLACES);
    IndoorVapours vapour = vapour(excess);
    assertEquals(
        whole(home, vapour), new RiskAgain(home, SurfaceFixtures.TABLES).of(home.rooms(), vapour));
  }

  @Test
  void doesNotKeepWhatAnotherRoomWas() {
    Home home = SurfaceFixtures.home("", PLACES);
    Home other = SurfaceFixtures.home("", PLACES.replace("single", "low-e double"));
    RiskAgain again = new RiskAgain(home, SurfaceFixtures.TABLES);
    IndoorVapours vapour = vapour(500);
    List<PlaceRisk> first = again.of(home.rooms(), vapour);
    List<PlaceRisk> second = again.of(other.rooms(), vapour);
    assertNotEquals(first, second);
    assertEquals(whole(other, vapour), second);
    assertEquals(first, again.of(home.rooms(), vapour));
  }

  private static List<PlaceRisk> whole(Home home, IndoorVapours vapour) {
    return SurfaceAssessor.assess(home, vapour, SurfaceFixtures.TABLES).places().stream()
        .map(PlaceRisk::of)
        .toList();
  }

  private static IndoorVapours vapour(double excess) {
    return new IndoorVapours(
        Optional.empty(),
        Map.of(
            "bed",
            new IndoorVapour(
                new Range(0.8 * excess, excess, 1.2 * excess),
                3,
                Basis.MEASURED,
                "an invented reading",
                Optional.empty(),
                List.of())));
  }
}
