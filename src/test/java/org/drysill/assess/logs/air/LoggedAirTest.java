package org.drysill.assess.logs.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.assess.logs.LogFixtures;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.LogsAssessor;
import org.drysill.assess.logs.LogsResult;
import org.drysill.assess.logs.air.AirChangeOfLog.Tracer;
import org.drysill.assess.ventilation.VentilationAssessor;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.physics.Range;
import org.drysill.physics.tracer.Decay;
import org.drysill.physics.tracer.Decays;
import org.drysill.physics.tracer.Rejection;
import org.drysill.physics.tracer.Stretch;
import org.drysill.physics.tracer.Substance;
import org.drysill.physics.tracer.event.EventKind;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.logs.LogRules;
import org.drysill.survey.log.Logs;
import org.junit.jupiter.api.Test;

/** Logs whose air change, nights and showers are known beforehand. */
class LoggedAirTest {
  private static final ReferenceData DATA = ReferenceData.bundled();
  private static final Home HOME = LogFixtures.home();
  private static final double STEP_H = 1.0 / 6;

  private static Figure flow(double low, double likely, double high) {
    return figure(new Range(low, likely, high));
  }

  private static Figure figure(Range kgS) {
    return new Figure(
        "moisture.itemised",
        "Water",
        kgS,
        Unit.MASS_RATE,
        Basis.ASSUMED,
        () -> new Working("", List.of(), List.of(), Optional.empty()));
  }

  private static LoggedAir assess(LogFixtures living, LogFixtures outdoors, Figure itemised) {
    return assess(LogFixtures.assess(HOME, living, outdoors), itemised);
  }

  private static LoggedAir assess(LogsResult logs, Figure itemised) {
    VentilationResult air = VentilationAssessor.assess(HOME, DATA.rules(), DATA.ventilation());
    return LoggedAirAssessor.assess(HOME, logs, air, itemised, LogRules.bundled(), DATA.readings());
  }

  /** People leave at eight: CO₂ falls towards 450 ppm at a rate; a weekly routine of calm days. */
  private static LogFixtures decays(int days, double perHour) {
    LogFixtures log = LogFixtures.from("2026-01-05T00:00", 600);
    for (int day = 0; day < days; day++) {
      log.hours(8, 20, 50, 2000);
      for (int i = 0; i < 16 * 6; i++) {
        log.hours(STEP_H, 20, 50, 450 + 1550 * Math.exp(-perHour * (i + 0.5) * STEP_H));
      }
    }
    return log;
  }

  private static LogFixtures outdoors(double hours) {
    return LogFixtures.from("2026-01-05T00:00", 600).hours(hours, 5, 80);
  }

  private static AirChangeOfLog by(LoggedAir air, Tracer tracer) {
    return air.airChanges().stream().filter(a -> a.tracer() == tracer).findFirst().orElseThrow();
  }

  @Test
  void decays_of_co2_give_the_air_change_with_an_interval() {
    AirChangeOfLog co2 =
        by(assess(decays(6, 0.5), outdoors(6 * 24), flow(0, 1e-4, 2e-4)), Tracer.CO2);
    assertThat(co2.accepted()).isEqualTo(6);
    assertThat(co2.looked()).isEqualTo(6);
    assertThat(co2.airChange().orElseThrow().likely()).isCloseTo(0.5, within(0.01));
    assertThat(co2.airChange().orElseThrow().value().isSpread()).isTrue();
    assertThat(co2.hardlyAbove()).isEmpty();
    // Two rooms share the leaks of a home of 84 m², so that much more is believed.
    assertThat(co2.believed().orElseThrow().verdict()).isEqualTo(Verdict.SHORT);
    assertThat(co2.said()).contains("less air than believed");
  }

  @Test
  void a_room_that_gets_what_it_is_believed_to_get_is_told_too() {
    Finding alike =
        new BelievedAir(room(), Tracer.CO2, rate(0.3, 0.6, 0.9))
            .against(rate(0.2, 0.3, 0.4), Optional.empty());
    assertThat(alike.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(alike.because()).contains("within the bounds of both");
  }

  /** Whoever reads the table must understand every one of them. */
  @Test
  void every_reason_for_which_a_fall_is_refused_has_its_own_words() {
    Stretch stretch = new Stretch(0, 9, 0, 1, 2, 1, Stretch.Ending.RISE);
    List<Decay> one =
        Arrays.stream(Rejection.values())
            .map(reason -> (Decay) new Decay.Rejected(stretch, reason, 0, 0))
            .toList();
    List<AirChangeOfLog.Refused> refused = Refusals.of(new Decays(new Substance.Inert(), one));
    assertThat(refused).hasSize(Rejection.values().length);
    assertThat(refused).extracting(AirChangeOfLog.Refused::reason).doesNotHaveDuplicates();
    assertThat(refused).extracting(AirChangeOfLog.Refused::count).containsOnly(1);
  }

  /** An outdoor log of CO₂ counts before what is usual. */
  @Test
  void the_background_is_that_of_the_outdoor_log_where_it_has_one() {
    LogFixtures living = LogFixtures.from("2026-01-05T00:00", 600);
    for (int day = 0; day < 4; day++) {
      living.hours(8, 20, 50, 2000);
      for (int i = 0; i < 96; i++) {
        living.hours(STEP_H, 20, 50, 520 + 1480 * Math.exp(-0.5 * (i + 0.5) * STEP_H));
      }
    }
    LogFixtures outdoors = LogFixtures.from("2026-01-05T00:00", 600).hours(96, 5, 80, 520);
    AirChangeOfLog co2 = by(assess(living, outdoors, flow(0, 1e-4, 2e-4)), Tracer.CO2);
    assertThat(co2.airChange().orElseThrow().likely()).isCloseTo(0.5, within(0.01));
  }

  /** n50 is 10 /h: a room believed to get some tenths of an air change cannot have so little. */
  @Test
  void a_room_that_gets_less_than_believed_is_told() {
    BelievedAir believed = new BelievedAir(room(), Tracer.CO2, rate(0.5, 0.6, 0.7));
    Finding less = believed.against(rate(0.2, 0.3, 0.4), Optional.empty());
    assertThat(less.verdict()).isEqualTo(Verdict.SHORT);
    assertThat(less.because()).contains("less air than believed");
    assertThat(less.settledBy()).isEmpty();
    Finding more = believed.against(rate(0.8, 0.9, 1.0), Optional.empty());
    assertThat(more.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(more.because()).contains("it gets more");
  }

  @Test
  void a_bound_by_vapour_tells_only_what_it_excludes() {
    BelievedAir believed = new BelievedAir(room(), Tracer.VAPOUR, rate(0.5, 0.6, 0.7));
    Finding open = believed.against(rate(0.1, 0.1, 0.1), Optional.of(rate(3, 3, 3)));
    assertThat(open.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(open.settledBy().orElseThrow()).contains("CO₂");
    assertThat(open.because()).contains("no more than a bound");
    assertThat(believed.against(rate(0.1, 0.1, 0.1), Optional.of(rate(0.4, 0.4, 0.4))).verdict())
        .isEqualTo(Verdict.SHORT);
    assertThat(believed.against(rate(0.8, 0.8, 0.8), Optional.of(rate(9, 9, 9))).verdict())
        .isEqualTo(Verdict.MEETS);
  }

  private static LoggedRoom room() {
    return LogFixtures.assess(
            HOME, LogFixtures.from("2026-01-05T00:00", 600).hours(24, 20, 50), outdoors(24))
        .rooms()
        .get(0);
  }

  private static Figure rate(double low, double likely, double high) {
    return new Figure(
        "log.living.air_change",
        "Air change",
        new Range(low, likely, high),
        Unit.AIR_CHANGE,
        Basis.CALCULATED,
        () -> new Working("", List.of(), List.of(), Optional.empty()));
  }

  /** Vapour that rises at once each morning and falls at a slow rate: n/M, so a bound. */
  private static LogFixtures vapour(int days, double perHour) {
    LogFixtures log = LogFixtures.from("2026-01-05T00:00", 600);
    for (int day = 0; day < days; day++) {
      log.hours(4, 20, 45);
      for (int i = 0; i < 20 * 6; i++) {
        log.hours(STEP_H, 20, 45 + 35 * Math.exp(-perHour * i * STEP_H));
      }
    }
    return log;
  }

  @Test
  void decays_of_vapour_give_a_bound_and_no_value() {
    AirChangeOfLog vapour =
        by(assess(vapour(6, 0.3), outdoors(6 * 24), flow(0, 1e-4, 2e-4)), Tracer.VAPOUR);
    assertThat(vapour.accepted()).isPositive();
    double least = vapour.airChange().orElseThrow().likely();
    assertThat(least).isBetween(0.05, 0.3);
    assertThat(vapour.airChange().orElseThrow().value().isSpread()).isFalse();
    assertThat(vapour.hardlyAbove().orElseThrow().likely()).isGreaterThan(15 * least);
  }

  @Test
  void a_log_without_a_fall_says_so() {
    LoggedAir air =
        assess(
            LogFixtures.from("2026-01-05T00:00", 600).hours(48, 20, 50, 700),
            outdoors(48),
            flow(0, 1e-4, 2e-4));
    assertThat(by(air, Tracer.CO2).airChange()).isEmpty();
    assertThat(by(air, Tracer.CO2).said()).startsWith("No fall of CO₂");
    assertThat(by(air, Tracer.VAPOUR).believed()).isEmpty();
    assertThat(air.events()).isEmpty();
    assertThat(air.events("living")).isEmpty();
  }

  @Test
  void refused_falls_are_counted_by_their_reason() {
    LogFixtures log = LogFixtures.from("2026-01-05T00:00", 600);
    for (int day = 0; day < 5; day++) {
      log.hours(12, 20, 50, 900).hours(0.5, 20, 50, 800).hours(11.5, 20, 50, 700);
    }
    AirChangeOfLog co2 = by(assess(log, outdoors(120), flow(0, 1e-4, 2e-4)), Tracer.CO2);
    assertThat(co2.accepted()).isZero();
    assertThat(co2.refused()).isNotEmpty();
    assertThat(co2.looked()).isEqualTo(5);
  }

  /**
   * From three to six 1050 ppm over outdoors; a sleeper breathes out 0.95 of 0.0029 to 0.0037 l/s,
   * a woman's to a man's at rest (Persily and de Jonge 2017, memory): 0.00315 l/s, so 3.0 l/s.
   */
  @Test
  void the_late_night_gives_the_air_of_each_sleeper() {
    LogFixtures log = LogFixtures.from("2026-01-05T00:00", 600);
    for (int day = 0; day < 7; day++) {
      log.hours(3, 20, 50, 900).hours(3, 20, 50, 1500).hours(18, 20, 50, 500);
    }
    LoggedAir air = assess(log, outdoors(7 * 24), flow(0, 1e-4, 2e-4));
    assertThat(air.nights()).hasSize(1);
    NightAir night = air.nights().get(0);
    assertThat(night.excess().likely()).isCloseTo(1050, within(1.0));
    assertThat(night.airPerSleeper().likely()).isCloseTo(3.0e-3, within(1e-5));
    assertThat(night.airPerSleeper().value().low()).isLessThan(night.airPerSleeper().likely());
  }

  @Test
  void an_empty_room_has_no_night() {
    LoggedAir air =
        assess(
            LogFixtures.from("2026-01-05T00:00", 600).hours(48, 20, 50, 520),
            outdoors(48),
            flow(0, 1e-4, 2e-4));
    assertThat(air.nights()).isEmpty();
    LoggedAir noCo2 =
        assess(
            LogFixtures.from("2026-01-05T00:00", 600).hours(48, 20, 50),
            outdoors(48),
            flow(0, 1e-4, 2e-4));
    assertThat(noCo2.nights()).isEmpty();
    assertThat(noCo2.airChanges()).extracting(AirChangeOfLog::tracer).containsOnly(Tracer.VAPOUR);
  }

  /** Of 60 to 90 % at 20 °C are 5.2 g/m³; each is over within half an hour. */
  @Test
  void showers_are_counted_with_their_rise_and_recovery() {
    LogFixtures log = LogFixtures.from("2026-01-05T00:00", 600);
    for (int day = 0; day < 7; day++) {
      log.hours(7, 20, 60)
          .hours(STEP_H, 20, 75)
          .hours(STEP_H, 20, 90)
          .hours(STEP_H, 20, 75)
          .hours(STEP_H, 20, 62)
          .hours(24 - 7 - 4 * STEP_H, 20, 60);
    }
    LoggedAir air = assess(log, outdoors(7 * 24), flow(0, 1e-4, 2e-4));
    RoomEvents.Group showers =
        air.events("living").orElseThrow().of(EventKind.SHOWER).orElseThrow();
    assertThat(showers.count()).isEqualTo(7);
    assertThat(showers.perWeek()).isCloseTo(7, within(1e-6));
    assertThat(1000 * showers.changeKgM3()).isCloseTo(5.2, within(0.1));
    assertThat(showers.recoveryHours().orElseThrow()).isBetween(0.1, 0.5);
    assertThat(showers.days().get(1) - showers.days().get(0)).isCloseTo(1, within(0.02));
    assertThat(air.events("living").orElseThrow().of(EventKind.AIRING)).isEmpty();
  }

  /** A rise at the end of the log is never over, and an even number has its middle between two. */
  @Test
  void a_rise_whose_end_is_hidden_has_no_recovery() {
    LogFixtures log = LogFixtures.from("2026-01-05T00:00", 600);
    log.hours(24, 20, 50).hours(STEP_H, 20, 75).hours(STEP_H, 20, 78);
    LoggedAir one = assess(log, outdoors(25), flow(0, 1e-4, 2e-4));
    assertThat(one.events("living").orElseThrow().groups().get(0).recoveryHours()).isEmpty();
    LogFixtures two = LogFixtures.from("2026-01-05T00:00", 600);
    two.hours(10, 20, 50).hours(2 * STEP_H, 20, 70).hours(10, 20, 50);
    two.hours(2 * STEP_H, 20, 80).hours(10, 20, 50);
    RoomEvents.Group group =
        assess(two, outdoors(31), flow(0, 1e-4, 2e-4))
            .events("living")
            .orElseThrow()
            .groups()
            .get(0);
    assertThat(group.count()).isEqualTo(2);
    assertThat(1000 * group.changeKgM3()).isCloseTo(0.25 * 17.3, within(0.05));
  }

  private static LoggedAir month(double percent, Figure itemised) {
    return assess(
        LogFixtures.from("2026-01-05T00:00", 3600).hours(10 * 24, 20, percent),
        LogFixtures.from("2026-01-05T00:00", 3600).hours(10 * 24, 5, 80),
        itemised);
  }

  /**
   * 20 °C and 55 % are 1285.3 Pa, 5 °C and 80 % are 697.5 Pa; the difference of 587.8 Pa is 587.8 /
   * (461.5 x 293.15) = 4.345 g/m³ of air that leaves at 20 °C. Each side at its own temperature
   * would make it 9.500 - 5.434 = 4.07 g/m³, 6 % too little.
   */
  @Test
  void the_production_that_the_log_implies_is_held_against_the_list() {
    Finding agrees = month(55, flow(1e-5, 1e-4, 5e-4)).production().orElseThrow();
    assertThat(agrees.verdict()).isEqualTo(Verdict.MEETS);
    assertThat(agrees.because()).contains("agree within their ranges");
    Figure implied = agrees.required().orElseThrow();
    Figure provided =
        VentilationAssessor.assess(HOME, DATA.rules(), DATA.ventilation()).provided().wholeHome();
    assertThat(implied.likely()).isCloseTo(provided.likely() * 0.0043448, within(1e-8));
    assertThat(month(55, flow(1e-8, 2e-8, 3e-8)).production().orElseThrow().verdict())
        .isEqualTo(Verdict.SHORT);
    assertThat(month(55, flow(0.1, 0.2, 0.3)).production().orElseThrow().because())
        .contains("more air than believed");
  }

  @Test
  void a_balance_that_cannot_be_made_says_why() {
    assertThat(month(32, flow(0, 1e-4, 2e-4)).production().orElseThrow().because())
        .contains("the loggers' error decides");
    Finding brief =
        assess(
                LogFixtures.from("2026-01-05T00:00", 3600).hours(48, 20, 55),
                outdoors(48),
                flow(0, 1e-4, 2e-4))
            .production()
            .orElseThrow();
    assertThat(brief.verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(brief.because()).contains("too short");
    Finding holes =
        assess(
                LogFixtures.from("2026-01-05T00:00", 3600)
                    .hours(80, 20, 55)
                    .gap(100)
                    .hours(80, 20, 55),
                LogFixtures.from("2026-01-05T00:00", 3600).hours(260, 5, 80),
                flow(0, 1e-4, 2e-4))
            .production()
            .orElseThrow();
    assertThat(holes.because()).contains("too many gaps");
  }

  @Test
  void without_outdoor_air_of_its_time_a_log_tells_no_production() {
    LogsResult logs =
        LogsAssessor.assess(
            HOME,
            new Logs(
                Map.of(
                    "living",
                    LogFixtures.from("2026-01-05T00:00", 3600).hours(240, 20, 55).log("th1")),
                Optional.empty()),
            LogRules.bundled(),
            DATA.readings());
    LoggedAir air = assess(logs, flow(0, 1e-4, 2e-4));
    assertThat(air.production()).isEmpty();
    assertThat(air.airChanges()).isEmpty();
  }
}
