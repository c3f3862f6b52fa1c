package org.drysill.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.drysill.assess.humidity.HumidityAssessor;
import org.drysill.assess.humidity.HumidityResult;
import org.drysill.assess.moisture.MoistureAssessor;
import org.drysill.assess.recovery.HeatRecoveryAssessor;
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.SurfaceAssessor;
import org.drysill.physics.Range;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.log.Logs;

/** A survey says the same in the units of either side of the Atlantic. */
class UnitsOfASurveyProperties {
  private static final int TRIES = 60;
  private static final ReadingRules RULES = ReadingRules.bundled();
  private static final SurfaceTables TABLES = SurfaceTables.bundled();
  private static final MoistureSources SOURCES = MoistureSources.bundled();
  private static final RecoveryDefaults RECOVERY = RecoveryDefaults.bundled();

  /** The units of one side: how a temperature, a difference and the others are written. */
  private enum Side {
    METRIC {
      @Override
      String celsius(double value) {
        return written(value, "C");
      }

      @Override
      String kelvin(double value) {
        return written(value, "K");
      }

      @Override
      String squareMetres(double value) {
        return written(value, "m2");
      }

      @Override
      String litresPerSecond(double value) {
        return written(value, "l/s");
      }
    },
    CUSTOMARY {
      @Override
      String celsius(double value) {
        return written(value * 1.8 + 32, "F");
      }

      @Override
      String kelvin(double value) {
        return written(value * 1.8, "F");
      }

      @Override
      String squareMetres(double value) {
        return written(value / 0.09290304, "ft2");
      }

      @Override
      String litresPerSecond(double value) {
        return written(value / 0.4719474432, "cfm");
      }
    };

    abstract String celsius(double value);

    abstract String kelvin(double value);

    abstract String squareMetres(double value);

    abstract String litresPerSecond(double value);

    static String written(double value, String unit) {
      return String.format(Locale.ROOT, "%.12f %s", value, unit);
    }
  }

  private static Home home(
      Side side, double indoor, double outdoor, double percent, double surface, double area) {
    String text =
        """
        drysill: 1
        visit:
          date: 2026-01-22
          instruments: [{id: th, kind: thermo-hygrometer, temperature_accuracy: ACCURACY, humidity_accuracy: 2 %}]
        dwelling: {jurisdiction: england, floor_area: AREA, bedrooms: 2, occupants: {adults: 2}}
        outdoor_readings: [{temperature: OUTDOOR, humidity: 85 %, instrument: th}]
        rooms:
          - id: bed
            use: bedroom
            floor_area: AREA
            setpoint: INDOOR
            readings: [{temperature: INDOOR, humidity: PERCENT %, instrument: th}]
            cold_spots:
              - {id: corner, kind: external corner, readings: [{surface: SURFACE, air: INDOOR, outdoor: OUTDOOR, instrument: th}]}
            windows: [{id: w, glazing: single, width: 1 m, height: 1 m}]
            fans:
              - id: unit
                kind: simultaneous heat recovery
                measured_flow: FLOW
                heat_recovery_tests: [{indoor: INDOOR, outdoor: OUTDOOR, supply: SURFACE, instrument: th}]
        """
            .replace("ACCURACY", side.kelvin(0.4))
            .replace("AREA", side.squareMetres(area))
            .replace("INDOOR", side.celsius(indoor))
            .replace("OUTDOOR", side.celsius(outdoor))
            .replace("SURFACE", side.celsius(surface))
            .replace("FLOW", side.litresPerSecond(9))
            .replace("PERCENT", String.format(Locale.ROOT, "%.12f", percent));
    return HomeFixtures.of(HomeFixtures.read(text));
  }

  /** Every number of the assessment of a home that its readings bear on. */
  private static List<Double> numbers(Home home) {
    HumidityResult humidity = HumidityAssessor.assess(home, RULES);
    Figure flow = HomeFixtures.figure("q", Range.exactly(0.03), Unit.AIRFLOW);
    Stream<Figure> moisture =
        MoistureAssessor.assess(home, SOURCES, flow, humidity, RULES.balance()).implied().stream();
    Stream<Figure> places =
        SurfaceAssessor.assess(home, IndoorVapours.of(humidity), TABLES).places().stream()
            .flatMap(UnitsOfASurveyProperties::figures);
    RecoveryUnit unit =
        HeatRecoveryAssessor.assess(home, Logs.none(), Map.of(), RECOVERY, RULES.accuracy())
            .units()
            .get(0);
    Stream<Figure> air =
        humidity.readings().stream()
            .flatMap(a -> Stream.of(a.temperature(), a.dewPoint(), a.excess(), a.excessPressure()));
    Stream<Figure> recovery =
        Stream.concat(unit.measured().stream(), unit.saved().map(s -> s.heat()).stream());
    return Stream.of(moisture, places, air, recovery)
        .flatMap(s -> s)
        .map(Figure::value)
        .flatMap(r -> Stream.of(r.low(), r.likely(), r.high()))
        .toList();
  }

  private static Stream<Figure> figures(ColdPlace place) {
    return Stream.of(
            Stream.of(place.factor().figure(), place.months().highestSurfaceHumidity()),
            place.months().requiredFactor().stream(),
            place.now().stream().map(now -> now.margin()),
            place.condensate().stream())
        .flatMap(s -> s);
  }

  @Property(tries = TRIES)
  void figures_do_not_depend_on_the_units_that_were_written(
      @ForAll @DoubleRange(min = 15, max = 24) double indoor,
      @ForAll @DoubleRange(min = -15, max = 9) double outdoor,
      @ForAll @DoubleRange(min = 30, max = 85) double percent,
      @ForAll @DoubleRange(min = 0.1, max = 0.95) double factor,
      @ForAll @DoubleRange(min = 6, max = 30) double area) {
    double surface = outdoor + factor * (indoor - outdoor);
    List<Double> metric = numbers(home(Side.METRIC, indoor, outdoor, percent, surface, area));
    List<Double> customary = numbers(home(Side.CUSTOMARY, indoor, outdoor, percent, surface, area));
    assertThat(metric).hasSizeGreaterThan(40).hasSameSizeAs(customary);
    for (int i = 0; i < metric.size(); i++) {
      assertThat(customary.get(i))
          .isCloseTo(metric.get(i), within(1e-7 * Math.max(1, Math.abs(metric.get(i)))));
    }
  }
}
