package org.drysill.assess.ventilation.airing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.assess.ventilation.VentilationFixtures;
import org.drysill.assess.ventilation.airing.RoomAiring.AtWeather;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Airing at the weathers of the defaults: 5 K and 1 m/s, 15 K and 1 m/s, 10 K and 6 m/s. */
class AiringStudyTest {
  private static List<RoomAiring> rooms(String use, String openings) {
    return AiringStudy.of(
        VentilationFixtures.home(
            "england",
            "floor_area: 84",
            "- {id: bed, use: "
                + use
                + ", floor_area: 20, height: 2.4, windows: ["
                + openings
                + "]}"),
        VentilationFixtures.DEFAULTS.airing());
  }

  private static String window(String id, String opening) {
    return "{id: " + id + ", opening: {" + opening + "}}";
  }

  /** Of a sash of 0.6 m²: 0.3·√(0.0035·1·15) = 0.0687, √(0.01 + 0.001 + 0.0525) in the other. */
  @Test
  void a_window_airs_by_the_greater_of_warmth_and_wind() {
    RoomAiring room =
        rooms("bedroom", window("w", "kind: sash, width: 600 mm, height: 1 m")).get(0);
    assertThat(room.whole()).isTrue();
    AtWeather winter = room.weathers().get(1);
    assertThat(winter.winter()).isTrue();
    assertThat(winter.flow().likely()).isCloseTo(0.3 * Math.sqrt(0.0525), within(1e-12));
    assertThat(winter.flow().value().low()).isEqualTo(winter.flow().likely());
    assertThat(winter.flow().value().high()).isCloseTo(0.3 * Math.sqrt(0.0635), within(1e-12));
    assertThat(winter.airChange().likely())
        .isCloseTo(winter.flow().likely() * 3600 / 48, within(1e-9));
    AtWeather windy = room.weathers().get(2);
    assertThat(windy.flow().likely()).isCloseTo(0.3 * Math.sqrt(0.036), within(1e-12));
    assertThat(winter.flow().working().inputs()).hasSize(3);
    assertThat(winter.flow().working().sources()).hasSize(3);
    assertThat(winter.airChange().working().inputs()).hasSize(2);
  }

  /** The share of a bottom-hung window by angle, EN 15242 (memory): 0.1744 at 10°. */
  @Test
  void a_window_ajar_airs_by_its_angle_and_windows_add() {
    String sash = window("a", "kind: sash, width: 600 mm, height: 1 m");
    double open = rooms("bedroom", sash).get(0).weathers().get(1).flow().likely();
    String tilted = window("b", "kind: bottom-hung, width: 600 mm, height: 1 m, angle: 10 deg");
    double ajar = rooms("bedroom", tilted).get(0).weathers().get(1).flow().likely();
    assertThat(ajar / open).isCloseTo(0.1744, within(0.0002));
    assertThat(rooms("bedroom", sash + ", " + tilted).get(0).weathers().get(1).flow().likely())
        .isCloseTo(open + ajar, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "kind: fixed, width: 600 mm, height: 1 m",
        "kind: side-hung, width: 600 mm, height: 1 m",
        "kind: side-hung, width: 600 mm, height: 1 m, angle: 0 deg",
        "kind: sash, width: 600 mm",
        "kind: sash, height: 600 mm",
        "kind: sash, width: 0 mm, height: 1 m"
      })
  void a_window_that_does_not_open_or_is_not_known_tells_nothing(String opening) {
    assertThat(rooms("bedroom", window("w", opening))).isEmpty();
    assertThat(rooms("bedroom", "{id: w}")).isEmpty();
  }

  @Test
  void a_window_that_was_not_measured_is_left_out_and_said() {
    String known = window("a", "kind: door, width: 800 mm, height: 2 m");
    RoomAiring room = rooms("living", known + ", " + window("b", "kind: sash")).get(0);
    assertThat(room.whole()).isFalse();
    assertThat(room.weathers()).hasSize(3);
    assertThat(rooms("loft", known)).isEmpty();
  }
}
