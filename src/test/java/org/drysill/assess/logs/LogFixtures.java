package org.drysill.assess.logs;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.reference.logs.LogRules;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.survey.Logger;
import org.drysill.survey.TemperatureUnit;
import org.drysill.survey.log.DateOrder;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LogFigures;
import org.drysill.survey.log.LogLayout;
import org.drysill.survey.log.LogQuality;
import org.drysill.survey.log.Logs;
import org.drysill.survey.log.SeriesBuilder;
import org.drysill.yaml.Place;
import org.drysill.yaml.Problem;

/** Small logs that a reader can reckon with. */
public final class LogFixtures {
  /** The zone of every log here. */
  public static final ZoneId ZONE = ZoneId.of("Europe/London");

  static final ReadingRules READINGS = ReadingRules.bundled();
  static final LogRules RULES = LogRules.bundled();

  private final SeriesBuilder series;
  private final ZoneId zone;
  private Instant at;
  private final Instant first;

  private LogFixtures(String start, int binSeconds) {
    this.zone = ZONE;
    this.first = LocalDateTime.parse(start).atZone(zone).toInstant();
    this.at = first;
    this.series = new SeriesBuilder(binSeconds);
  }

  /** A log that begins at a local time, with bins of a width. */
  public static LogFixtures from(String start, int binSeconds) {
    return new LogFixtures(start, binSeconds);
  }

  /** Air that stays the same for some hours. */
  public LogFixtures hours(double hours, double celsius, double percent) {
    return hours(hours, celsius, percent, Double.NaN);
  }

  /** The same with CO₂. */
  public LogFixtures hours(double hours, double celsius, double percent, double ppm) {
    Instant end = at.plus(Duration.ofMillis(Math.round(hours * 3_600_000)));
    series.add(at.toEpochMilli(), end.toEpochMilli(), celsius, percent / 100, ppm);
    at = end;
    return this;
  }

  /** No readings for some hours. */
  public LogFixtures gap(double hours) {
    at = at.plus(Duration.ofMillis(Math.round(hours * 3_600_000)));
    return this;
  }

  /** What it holds. */
  public LogContent content() {
    return new LogContent(
        series.build(),
        new LogFigures(10, 10, first, at, 600, Duration.between(first, at).toSeconds(), 0),
        new LogLayout(
            "UTF-8",
            ',',
            '.',
            1,
            Map.of(),
            DateOrder.YEAR_MONTH_DAY,
            zone,
            true,
            TemperatureUnit.CELSIUS,
            true,
            false),
        new LogQuality(List.of()));
  }

  /** As the log of a logger. */
  public Log log(String instrument) {
    return new Log(logger(instrument), "00", Optional.of(content()), List.of());
  }

  /** A log that cannot be used for a reason in a line. */
  public static Log unusable(int line, String expected) {
    return new Log(
        logger("th1"),
        "",
        Optional.empty(),
        List.of(
            new Problem(
                Problem.Severity.WARNING,
                "L001",
                new Place("room.csv", line, 1),
                "",
                "no column of humidity",
                expected,
                Optional.empty(),
                "")));
  }

  private static Logger logger(String instrument) {
    return new Logger(
        "room.csv",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(instrument));
  }

  /** A home with a living room and a bedroom; th1 errs by 0.4 K and 2.5 points. */
  public static Home home() {
    return home("");
  }

  /** The same with outdoor readings in flow style. */
  public static Home home(String outdoor) {
    return home(outdoor, 2.5);
  }

  /** The same with a finer hygrometer, by its error in percentage points. */
  public static Home homeWithin(double points) {
    return home("", points);
  }

  private static Home home(String outdoor, double points) {
    return HomeFixtures.of(
        HomeFixtures.read(
            """
            drysill: 1
            visit:
              date: 2026-01-22
              instruments:
                - {id: th1, kind: thermo-hygrometer, temperature_accuracy: 0.4 K, humidity_accuracy: POINTS %, co2_accuracy: 50 ppm}
            dwelling: {jurisdiction: england, floor_area: 84 m2}
            outdoor_readings: [OUTDOOR]
            rooms:
              - id: living
                use: living
                floor_area: 20 m2
                cold_spots: [{id: corner, kind: external corner, temperature_factor: 0.6}]
              - {id: bed, use: bedroom, floor_area: 10 m2}
            """
                .replace("OUTDOOR", outdoor)
                .replace("POINTS", Double.toString(points))));
  }

  /** What logs of the living room and outdoors say. */
  public static LogsResult assess(Home home, LogFixtures living, LogFixtures outdoors) {
    return LogsAssessor.assess(
        home,
        new Logs(Map.of("living", living.log("th1")), Optional.of(outdoors.log("th1"))),
        RULES,
        READINGS);
  }
}
