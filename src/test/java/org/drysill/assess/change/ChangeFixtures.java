package org.drysill.assess.change;

import java.util.Map;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.change.visit.VisitFacts;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.recovery.HeatRecoveryAssessor;
import org.drysill.assess.recovery.HeatRecoveryResult;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.SurfaceAssessor;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.log.Logs;

/** Two visits to a home: on 11 February 2025 and on 22 January 2026, with fine instruments. */
public final class ChangeFixtures {
  static final ReadingRules RULES = ReadingRules.bundled();
  private static final SurfaceTables TABLES = SurfaceTables.bundled();

  private ChangeFixtures() {}

  /** A comparison of two lists of rooms, both at 5 °C and 80 % outdoors. */
  public static ChangeResult compare(String before, String after) {
    return compare(visit(OUTDOOR, before), visit(OUTDOOR, after));
  }

  /** Outdoor air of 5 °C and 80 %. */
  public static final String OUTDOOR = "{temperature: 5 C, humidity: 80 %, instrument: fine}";

  /** A comparison of two visits. */
  public static ChangeResult compare(Visit before, Visit after) {
    return ChangeAssessor.assess(facts("2025-02-11", before), facts("2026-01-22", after), RULES);
  }

  /**
   * What stands in a survey.
   *
   * @param outdoor outdoor readings in flow style
   * @param rooms rooms as YAML list entries
   * @param timeline events in flow style
   * @param address the address; empty for none
   */
  public record Visit(String outdoor, String rooms, String timeline, String address) {
    /** Without an address. */
    public Visit(String outdoor, String rooms, String timeline) {
      this(outdoor, rooms, timeline, "");
    }
  }

  /** A visit without a timeline. */
  public static Visit visit(String outdoor, String rooms) {
    return new Visit(outdoor, rooms, "");
  }

  /** A living room with a reading. */
  public static String living(double celsius, double percent) {
    return "- {id: living, use: living, readings: [%s]}".formatted(reading(celsius, percent));
  }

  static String reading(double celsius, double percent) {
    return "{temperature: %s C, humidity: %s %%, instrument: fine}".formatted(celsius, percent);
  }

  static VisitFacts facts(String date, Visit visit) {
    return facts(date, visit, Logs.none());
  }

  static VisitFacts facts(String date, Visit visit, Logs logs) {
    String text =
        """
        drysill: 1
        visit:
          date: DATE
          instruments:
            - {id: fine, kind: thermo-hygrometer, temperature_accuracy: 0.1 K, humidity_accuracy: 0.5 %}
            - {id: hood, kind: flow hood, flow_accuracy: 5 %}
          timeline: [TIMELINE]
        dwelling: {jurisdiction: england, floor_area: 84 m2ADDRESS}
        outdoor_readings: [OUTDOOR]
        rooms:
        """
            .replace("DATE", date)
            .replace("TIMELINE", visit.timeline())
            .replace("ADDRESS", visit.address().isEmpty() ? "" : ", address: " + visit.address())
            .replace("OUTDOOR", visit.outdoor());
    Home home =
        HomeFixtures.of(HomeFixtures.read(text + visit.rooms().stripIndent().strip().indent(2)));
    HumidityResult humidity = HumidityAssessor.assess(home, RULES);
    IndoorVapours vapour = IndoorVapours.of(humidity);
    HeatRecoveryResult recovery =
        HeatRecoveryAssessor.assess(
            home, Logs.none(), Map.of(), RecoveryDefaults.bundled(), RULES.accuracy());
    return new VisitFacts(
        home,
        logs,
        humidity,
        vapour,
        SurfaceAssessor.assess(home, vapour, TABLES),
        recovery,
        humidity.findings());
  }
}
