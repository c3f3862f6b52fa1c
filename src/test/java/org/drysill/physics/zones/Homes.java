package org.drysill.physics.zones;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Homes for properties: rooms in a row with fans, leaks, doors, panes, all from one seed. */
final class Homes {
  static final double OUTDOOR = 0.005;

  final int zones;
  final double[] supply;
  final double[] extract;
  double[] exchange;
  final double[] production;
  final double[] stores;
  final double[] saturation;
  final double infiltration;
  final List<Pane> panes = new ArrayList<>();
  final List<AirRoutes.Door> doors = new ArrayList<>();
  private final double[] shares;

  Homes(long seed) {
    Random random = new Random(seed);
    zones = 1 + random.nextInt(8);
    supply = some(random, zones, 0.004);
    extract = some(random, zones, 0.008);
    exchange = some(random, zones - 1, 0.03);
    production = some(random, zones, 5e-5);
    stores = new double[zones];
    shares = new double[zones];
    double sum = 0;
    for (int i = 0; i < zones; i++) {
      stores[i] = (5 + 60 * random.nextDouble()) * (1 + 14 * random.nextDouble());
      shares[i] = 0.1 + random.nextDouble();
      sum += shares[i];
    }
    for (int i = 0; i < zones; i++) {
      shares[i] /= sum;
    }
    for (int i = 1; i < zones; i++) {
      doors.add(new AirRoutes.Door(random.nextInt(i), i, 0.6 + random.nextDouble()));
    }
    infiltration = 0.002 + 0.03 * random.nextDouble();
    int windows = random.nextInt(6);
    saturation = new double[windows];
    for (int p = 0; p < windows; p++) {
      panes.add(new Pane(random.nextInt(zones), 0.01 * random.nextDouble()));
      // A pane is no colder than outdoors, so its saturation is no less than what is outdoors.
      saturation[p] = OUTDOOR + 0.007 * random.nextDouble();
    }
  }

  double outdoorAir() {
    double in = 0;
    double out = 0;
    for (int i = 0; i < zones; i++) {
      in += supply[i];
      out += extract[i];
    }
    return Math.max(in, out) + infiltration;
  }

  ZoneFlows flows() {
    return flows(1);
  }

  /** With so many times the leaks. */
  ZoneFlows flows(double times) {
    return new AirRoutes(shares, shares, doors)
        .flows(supply, extract, outdoorAir() + (times - 1) * infiltration, exchange);
  }

  /** A home beside it: the same zones and panes, other leaks, water and areas. */
  LaneHome lane(double times) {
    return new LaneHome(
        flows(times),
        panes.stream().map(p -> new Pane(p.zone(), times * p.transferM3S())).toList(),
        Arrays.stream(production).map(g -> times * g).toArray());
  }

  /** Adds doors that close loops. */
  void loops(Random random) {
    for (int i = 2; i < zones; i++) {
      doors.add(new AirRoutes.Door(i - 1, i, 0.6 + random.nextDouble()));
    }
    exchange = Arrays.copyOf(exchange, doors.size());
    for (int d = zones - 1; d < doors.size(); d++) {
      exchange[d] = 0.02 * random.nextDouble();
    }
  }

  ZoneVapour steady() {
    return new SteadyZones(flows(), panes).at(production, OUTDOOR, saturation);
  }

  private static double[] some(Random random, int number, double most) {
    double[] values = new double[Math.max(0, number)];
    for (int i = 0; i < values.length; i++) {
      values[i] = random.nextInt(3) == 0 ? 0 : most * random.nextDouble();
    }
    return values;
  }
}
