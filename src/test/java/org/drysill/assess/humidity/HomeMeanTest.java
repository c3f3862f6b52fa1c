package org.drysill.assess.humidity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.humidity.HumidityFixtures.assess;
import static org.drysill.assess.humidity.HumidityFixtures.reading;

import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.junit.jupiter.api.Test;

/** The air of the home as the mean of its rooms by volume; figures reckoned by hand. */
class HomeMeanTest {
  private static final String OUTDOOR = reading("10:00", 4, 85);

  /** 40 m² × 2.4 m and 10 m² × 4.8 m: weights 2/3 and 1/3 by volume, 0.8 and 0.2 by area. */
  private static final String ROOMS =
      """
      - {id: living, use: living, floor_area: 40 m2, readings: [%s]}
      - {id: bath, use: bathroom, floor_area: 10 m2, height: 4.8 m, readings: [%s]}
      """
          .formatted(reading("10:05", 20, 50), reading("10:10", 22, 75));

  private final HumidityResult result = assess(OUTDOOR, ROOMS);
  private final HomeAir home = result.home().orElseThrow();
  private final RoomAir living = result.readings().get(0);
  private final RoomAir bath = result.readings().get(1);

  @Test
  void rooms_count_by_their_volume() {
    assertThat(home.temperature().likely()).isCloseTo((2 * 20 + 22) / 3.0, within(1e-9));
    assertThat(home.excessPressure().likely())
        .isCloseTo(
            (2 * living.excessPressure().likely() + bath.excessPressure().likely()) / 3,
            within(1e-9));
    assertThat(home.outdoorTemperature().likely()).isCloseTo(4, within(1e-9));
    assertThat(home.rooms()).containsExactly("living", "bath");
    assertThat(home.simultaneous()).isTrue();
  }

  @Test
  void several_readings_of_a_room_count_as_one() {
    String first = reading("10:05", 20, 50);
    String twice = ROOMS.replace(first, reading("10:01", 18, 50) + ", " + first);
    HomeAir mean = assess(OUTDOOR, twice).home().orElseThrow();
    assertThat(mean.temperature().likely()).isCloseTo((2 * 19 + 22) / 3.0, within(1e-9));
  }

  @Test
  void errors_are_not_divided_by_the_number_of_rooms() {
    assertThat(home.temperature().value().high() - home.temperature().likely())
        .isCloseTo(0.4, within(1e-9));
  }

  @Test
  void a_room_without_a_reading_lies_between_the_driest_and_the_dampest() {
    Figure unread = home.excessPressureUnread();
    assertThat(unread.likely()).isEqualTo(home.excessPressure().likely());
    assertThat(unread.value().low()).isEqualTo(living.excessPressure().value().low());
    assertThat(unread.value().high()).isEqualTo(bath.excessPressure().value().high());
    assertThat(unread.basis()).isEqualTo(Basis.ASSUMED);
  }

  @Test
  void its_working_leads_to_each_room_and_its_volume() {
    assertThat(home.excessPressureUnread().working().inputs())
        .extracting(Input::symbol)
        .containsExactly("x(living)", "V(living)", "x(bath)", "V(bath)");
    assertThat(home.excessPressure().working().inputs())
        .extracting(i -> i.figure().orElseThrow())
        .contains("room.living.vapour_pressure_excess", "room.living.volume");
    assertThat(home.excessPressure().working().formula()).contains("2 of 2 heated rooms");
  }

  @Test
  void lofts_and_cellars_are_left_out() {
    HumidityResult cellar =
        assess(
            OUTDOOR,
            "- {id: cellar, use: cellar, readings: [%s]}".formatted(reading("10:05", 12, 80)));
    assertThat(cellar.readings()).hasSize(1);
    assertThat(cellar.home()).isEmpty();
  }

  @Test
  void readings_with_outdoor_air_beside_them_go_before_those_without() {
    String later = ROOMS.replace("T10:10", "T20:10");
    HomeAir mean = assess(OUTDOOR, later).home().orElseThrow();
    assertThat(mean.rooms()).containsExactly("living");
    assertThat(mean.simultaneous()).isTrue();
  }

  @Test
  void without_outdoor_readings_the_excess_is_assumed_and_the_temperature_is_not() {
    HomeAir mean = assess("", ROOMS).home().orElseThrow();
    assertThat(mean.simultaneous()).isFalse();
    assertThat(mean.excess().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(mean.temperature().basis()).isEqualTo(Basis.CALCULATED);
  }
}
