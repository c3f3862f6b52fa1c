package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.assess.HomeFixtures;
import org.drysill.assess.OutdoorClimate;
import org.drysill.physics.Range;
import org.drysill.reference.surfaces.SurfaceTables;

/** Homes with one room for tests of surfaces: set point 20 °C, a stated climate. */
final class SurfaceFixtures {
  static final SurfaceTables TABLES = SurfaceTables.bundled();

  /** An invented climate of monthly means, not published: °C, and relative humidity. */
  private static final double[] CELSIUS = {
    4.5, 4.7, 6.6, 8.9, 12.0, 14.8, 16.8, 16.6, 14.2, 10.9, 7.3, 5.0
  };

  private static final double[] HUMIDITY = {
    0.86, 0.83, 0.80, 0.77, 0.76, 0.76, 0.76, 0.78, 0.81, 0.84, 0.87, 0.87
  };

  private SurfaceFixtures() {}

  /** A home of 1931 with one bedroom at 20 °C that has the given keys. */
  static Home home(String outdoor, String keys) {
    return home("england", outdoor, keys);
  }

  static Home home(String jurisdiction, String outdoor, String keys) {
    String text =
        """
        drysill: 1
        visit:
          date: 2026-01-22
          instruments:
            - {id: th1, kind: thermo-hygrometer, temperature_accuracy: 0.4 K, humidity_accuracy: 2.5 %}
            - {id: ir1, kind: surface thermometer, temperature_accuracy: 1 K}
        dwelling: {jurisdiction: JURISDICTION, floor_area: 84 m2, built: 1931}
        OUTDOOR
        rooms:
          - id: bed
            name: back bedroom
            use: bedroom
            setpoint: 20 C
        """
            .replace("JURISDICTION", jurisdiction)
            .replace("OUTDOOR", outdoor.isEmpty() ? "" : "outdoor_readings: [" + outdoor + "]");
    return withClimate(HomeFixtures.of(HomeFixtures.read(text + keys.indent(4))), climate());
  }

  /** The invented climate of twelve months. */
  static OutdoorClimate climate() {
    return climate(
        IntStream.range(0, 12)
            .mapToObj(
                i ->
                    new OutdoorClimate.Month(
                        i + 1, 30, CELSIUS[i], Range.exactly(HUMIDITY[i]), Optional.empty()))
            .toList());
  }

  /** Twelve equal months. */
  static OutdoorClimate constant(double celsius, double humidity) {
    return climate(
        IntStream.rangeClosed(1, 12)
            .mapToObj(
                i ->
                    new OutdoorClimate.Month(
                        i, 30, celsius, Range.exactly(humidity), Optional.empty()))
            .toList());
  }

  private static OutdoorClimate climate(List<OutdoorClimate.Month> months) {
    return new OutdoorClimate("test", months, Basis.ASSUMED, List.of(), Optional.empty());
  }

  static Home withClimate(Home h, OutdoorClimate climate) {
    return new Home(
        h.survey(),
        h.floorArea(),
        h.volume(),
        h.storeys(),
        h.bedrooms(),
        h.occupants(),
        h.setpoint(),
        h.n50(),
        climate,
        h.rooms(),
        h.money(),
        h.assumptions());
  }

  static CondensationResult assess(Home home) {
    return SurfaceAssessor.assess(home, IndoorVapours.none(), TABLES);
  }

  static IndoorVapours vapour(double pascal, double outdoor) {
    return new IndoorVapours(
        Optional.of(
            new IndoorVapour(
                Range.exactly(pascal),
                outdoor,
                Basis.MEASURED,
                "the readings",
                Optional.empty(),
                List.of())),
        Map.of());
  }

  static ColdPlace place(CondensationResult result, String id) {
    return result.places().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
  }
}
