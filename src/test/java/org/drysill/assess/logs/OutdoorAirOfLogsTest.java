package org.drysill.assess.logs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.survey.log.Logs;
import org.junit.jupiter.api.Test;

/** Which outdoor air a room's log is held against: a log, else readings, else the climate. */
class OutdoorAirOfLogsTest {
  private static final String READING =
      "{at: 2026-01-05T10:00, temperature: 3 C, humidity: 90 %, instrument: th1}";

  private static LoggedRoom alone(Home home, LogFixtures living) {
    return LogsAssessor.assess(
            home,
            new Logs(Map.of("living", living.log("th1")), Optional.empty()),
            LogFixtures.RULES,
            LogFixtures.READINGS)
        .rooms()
        .get(0);
  }

  @Test
  void an_outdoor_log_comes_first() {
    LoggedRoom room =
        LogFixtures.assess(
                LogFixtures.home(READING),
                LogFixtures.from("2026-01-05T08:00", 600).hours(4, 20, 50),
                LogFixtures.from("2026-01-05T08:00", 600).hours(4, 6, 80))
            .rooms()
            .get(0);
    assertThat(room.source()).isEqualTo(OutdoorSource.LOG);
    assertThat(room.outdoorTemperature().likely()).isCloseTo(6, within(1e-9));
    assertThat(room.holdsADay()).isFalse();
  }

  @Test
  void readings_near_in_time_stand_in_for_a_short_log() {
    LoggedRoom room =
        alone(
            LogFixtures.home(READING), LogFixtures.from("2026-01-05T08:00", 600).hours(4, 20, 50));
    assertThat(room.source()).isEqualTo(OutdoorSource.READINGS);
    assertThat(room.outdoorTemperature().likely()).isCloseTo(3, within(1e-9));
    assertThat(room.excess().basis()).isEqualTo(Basis.CALCULATED);
  }

  @Test
  void a_log_that_outlasts_the_readings_is_held_against_the_climate() {
    LoggedRoom room =
        alone(
            LogFixtures.home(READING),
            LogFixtures.from("2026-01-05T08:00", 600).hours(31 * 24, 20, 50));
    assertThat(room.source()).isEqualTo(OutdoorSource.CLIMATE);
    assertThat(room.outdoorSaid()).contains("for want of an outdoor log");
    assertThat(room.outdoorTemperature().likely()).isCloseTo(5, within(1e-9));
    assertThat(room.excess().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(room.classes()).isEmpty();
    // 85 % at 5 °C is 741 Pa; a day may stand 30 % from its month.
    double half = room.excessPressure().value().high() - room.excessPressure().likely();
    assertThat(half).isCloseTo(Math.hypot(222, 65), within(3.0));
  }

  @Test
  void an_outdoor_log_of_another_time_is_no_outdoor_log() {
    LoggedRoom room =
        LogFixtures.assess(
                LogFixtures.home(),
                LogFixtures.from("2026-01-05T00:00", 600).hours(48, 20, 50),
                LogFixtures.from("2026-01-06T12:00", 600).hours(48, 6, 80))
            .rooms()
            .get(0);
    assertThat(room.source()).isEqualTo(OutdoorSource.CLIMATE);
  }

  @Test
  void a_log_without_a_named_instrument_takes_a_stated_assumption() {
    LogsResult result =
        LogsAssessor.assess(
            LogFixtures.home(),
            new Logs(
                Map.of(
                    "living",
                    LogFixtures.from("2026-01-05T00:00", 600).hours(24, 20, 50).log("other")),
                Optional.empty()),
            LogFixtures.RULES,
            LogFixtures.READINGS);
    assertThat(result.assumptions())
        .extracting(a -> a.id())
        .anyMatch(id -> id.contains("humidity"));
    assertThat(result.room("living")).isPresent();
    assertThat(result.room("bed")).isEmpty();
    assertThat(result.criteria()).hasSize(3);
  }
}
