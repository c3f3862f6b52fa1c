package org.drysill.physics.zones;

import java.util.List;
import org.drysill.physics.Bounds;

/**
 * How air comes in, moves through doors and goes out, from what fans and leaks move in all: a
 * balanced rule for time-averages, no network of pressures.
 *
 * <pre>
 * qe(i) = supply(i) + (Q − Σ supply) · a(i)     qo(i) = extract(i) + (Q − Σ extract) · b(i)
 * f(door) = w (φ(i) − φ(j)),  with φ such that every zone is in balance
 * q(i, j) = x + f/2,  q(j, i) = x − f/2  where |f| ≤ 2x;  else f one way and nothing the other
 * </pre>
 *
 * <p>Q all outdoor air [m³/s], at least what fans supply and what they extract; a, b shares of each
 * zone in what leaks in and out; w weight of a door, such as its width; f what passes it on balance
 * and x what passes both ways while nothing does on balance [m³/s]. Of all flows that balance, f is
 * the one of the least Σ f²/w.
 */
public final class AirRoutes {
  private final double[] shareIn;
  private final double[] shareOut;
  private final List<Door> doors;
  private final Factors laplacian;

  /**
   * A way between two zones.
   *
   * @param one a zone
   * @param other another
   * @param weight how easily air passes it beside the other doors, above 0
   */
  public record Door(int one, int other, double weight) {
    /** Refuses what is no way. */
    public Door {
      Bounds.above("weight of a door", weight, 0);
      if (one == other) {
        throw new IllegalArgumentException("a door from zone " + one + " into itself");
      }
    }
  }

  /**
   * The routes of a home.
   *
   * @param shareIn a(i), at least 0 with sum 1
   * @param shareOut b(i), likewise
   * @param doors ways that join all zones
   */
  public AirRoutes(double[] shareIn, double[] shareOut, List<Door> doors) {
    this.shareIn = shares("shares in what leaks in", shareIn, shareIn.length);
    this.shareOut = shares("shares in what leaks out", shareOut, shareIn.length);
    this.doors = List.copyOf(doors);
    this.laplacian = new Factors(zones());
    factorise();
  }

  /** Number of zones. */
  public int zones() {
    return shareIn.length;
  }

  /**
   * The flows.
   *
   * @param supply outdoor air that fans bring into each zone [m³/s]
   * @param extract air that fans take out of each zone [m³/s]
   * @param outdoorAir Q [m³/s]
   * @param exchange x of each door [m³/s]
   */
  public ZoneFlows flows(double[] supply, double[] extract, double outdoorAir, double[] exchange) {
    Bounds.inside("doors with an exchange", exchange.length, doors.size(), doors.size());
    double leaksIn = leaks(outdoorAir, supply);
    double leaksOut = leaks(outdoorAir, extract);
    int n = zones();
    double[] in = new double[n];
    double[] out = new double[n];
    double[] surplus = new double[n];
    for (int i = 0; i < n; i++) {
      in[i] = supply[i] + leaksIn * shareIn[i];
      out[i] = extract[i] + leaksOut * shareOut[i];
      surplus[i] = in[i] - out[i];
    }
    return new ZoneFlows(through(surplus, exchange), in, out);
  }

  private double[][] through(double[] surplus, double[] exchange) {
    laplacian.solve(surplus);
    double[][] between = new double[zones()][zones()];
    for (int d = 0; d < doors.size(); d++) {
      Door door = doors.get(d);
      double both = Bounds.atLeast("exchange through a door [m³/s]", exchange[d], 0);
      double net = door.weight() * (surplus[door.one()] - surplus[door.other()]);
      between[door.one()][door.other()] += one(both, net);
      between[door.other()][door.one()] += one(both, -net);
    }
    return between;
  }

  private static double one(double both, double net) {
    return Math.abs(net) <= 2 * both ? both + net / 2 : Math.max(net, 0);
  }

  private static double leaks(double outdoorAir, double[] fans) {
    double moved = 0;
    for (double fan : fans) {
      moved += Bounds.atLeast("flow of fans [m³/s]", fan, 0);
    }
    // Where fans move it all, sums of the same flows in another order may differ in the last digit.
    double leaks = outdoorAir - moved;
    return Math.max(0, Bounds.atLeast("outdoor air less fans [m³/s]", leaks, -1e-12 * moved));
  }

  /** The doors' Laplacian, held at zone 0; singular where a zone is not joined. */
  private void factorise() {
    int n = zones();
    checkJoined(n);
    double[] matrix = new double[n * n];
    for (Door door : doors) {
      matrix[door.one() * n + door.one()] += door.weight();
      matrix[door.other() * n + door.other()] += door.weight();
      matrix[door.one() * n + door.other()] -= door.weight();
      matrix[door.other() * n + door.one()] -= door.weight();
    }
    double[] held = new double[n];
    held[0] = 1;
    laplacian.factorise(matrix, held);
  }

  private void checkJoined(int n) {
    boolean[] joined = new boolean[n];
    joined[0] = true;
    for (int round = 1; round < n; round++) {
      for (Door door : doors) {
        boolean either = joined[door.one()] || joined[door.other()];
        joined[door.one()] = either;
        joined[door.other()] = either;
      }
    }
    for (int i = 0; i < n; i++) {
      if (!joined[i]) {
        throw new IllegalArgumentException("no door joins zone " + i + " to zone 0");
      }
    }
  }

  private static double[] shares(String name, double[] shares, int zones) {
    Bounds.inside(name, shares.length, Math.max(1, zones), zones);
    double sum = 0;
    for (double share : shares) {
      sum += Bounds.atLeast(name, share, 0);
    }
    Bounds.inside("sum of " + name, sum, 1 - 1e-9, 1 + 1e-9);
    return shares.clone();
  }
}
