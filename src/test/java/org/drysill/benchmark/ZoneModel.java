package org.drysill.benchmark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.drysill.physics.zones.AirRoutes;
import org.drysill.physics.zones.Pane;
import org.drysill.physics.zones.SteadyZones;
import org.drysill.physics.zones.ZoneFlows;
import org.drysill.physics.zones.ZoneSteps;

/**
 * How many packages of measures the moisture model evaluates by month in a second, and how many
 * room-hours by hour, each beside a bare loop that evaluates the same recurrence on plain arrays
 * without checks, panes or states, measured in the same run.
 *
 * <pre>java -cp target/classes:target/test-classes org.drysill.benchmark.ZoneModel</pre>
 */
final class ZoneModel {
  private static final int ROOMS = 8;
  private static final int MONTHS = 12;
  private static final int HOURS = 8760;
  private static final double SECONDS = 2;

  private static double sink;

  private ZoneModel() {}

  public static void main(String[] arguments) {
    compare("packages by month", ZoneModel::packages, ZoneModel::barePackages);
    compare("room-hours", ZoneModel::hours, ZoneModel::bareHours);
    System.out.println("(" + (sink > 0 ? "kept" : "lost") + ")");
  }

  private static void compare(String what, LongSupplier model, LongSupplier bare) {
    perSecond(model);
    perSecond(bare);
    double modelled = perSecond(model);
    double floor = perSecond(bare);
    System.out.println(
        String.format(
            Locale.ROOT,
            "%-18s %,.0f in a second; bare loop %,.0f; ratio %.2f",
            what,
            modelled,
            floor,
            floor / modelled));
  }

  /** How many a second of what a call says that it did. */
  private static double perSecond(LongSupplier work) {
    long start = System.nanoTime();
    long done = 0;
    while (System.nanoTime() - start < SECONDS * 1e9) {
      done += work.getAsLong();
    }
    return done / ((System.nanoTime() - start) / 1e9);
  }

  private static ZoneFlows flows(AirRoutes routes, double extract) {
    double[] fans = new double[ROOMS];
    fans[1] = extract;
    double[] exchange = new double[ROOMS - 1];
    Arrays.fill(exchange, 0.01);
    return routes.flows(new double[ROOMS], fans, 0.02 + extract, exchange);
  }

  private static AirRoutes routes() {
    double[] shares = new double[ROOMS];
    Arrays.fill(shares, 1.0 / ROOMS);
    List<AirRoutes.Door> doors = new ArrayList<>();
    for (int i = 1; i < ROOMS; i++) {
      doors.add(new AirRoutes.Door(0, i, 1));
    }
    return new AirRoutes(shares, shares, doors);
  }

  private static List<Pane> panes() {
    List<Pane> panes = new ArrayList<>();
    for (int i = 0; i < ROOMS; i++) {
      panes.add(new Pane(i, 0.004));
    }
    return panes;
  }

  private static double[] production() {
    double[] production = new double[ROOMS];
    Arrays.fill(production, 1.2e-5);
    return production;
  }

  private static final AirRoutes ROUTES = routes();
  private static final List<Pane> PANES = panes();
  private static final double[] PRODUCTION = production();

  private static long packages() {
    double[] saturation = new double[ROOMS];
    for (int p = 0; p < 100; p++) {
      SteadyZones zones = new SteadyZones(flows(ROUTES, p * 1e-4), PANES);
      for (int m = 0; m < MONTHS; m++) {
        Arrays.fill(saturation, 0.007 + 0.001 * m);
        sink += zones.at(PRODUCTION, 0.005 + 0.0005 * m, saturation).content(p % ROOMS);
      }
    }
    return 100;
  }

  private static long barePackages() {
    for (int p = 0; p < 100; p++) {
      double[] lu = Bare.matrix(0.02 + p * 1e-4);
      Bare.factorise(lu, ROOMS);
      double[] v = new double[ROOMS];
      for (int m = 0; m < MONTHS; m++) {
        Arrays.fill(v, 1.2e-5 + 0.0025 * (0.005 + 0.0005 * m));
        Bare.solve(lu, v, ROOMS);
        sink += v[p % ROOMS];
      }
    }
    return 100;
  }

  private static long hours() {
    double[] stores = new double[ROOMS];
    Arrays.fill(stores, 300);
    ZoneSteps steps =
        new ZoneSteps(List.of(flows(ROUTES, 0), flows(ROUTES, 0.01)), stores, PANES, 3600);
    double[] saturation = new double[ROOMS];
    for (int h = 0; h < HOURS; h++) {
      Arrays.fill(saturation, 0.009 + 0.003 * (h % 24) / 24);
      steps.step(h % 24 < 8 ? 0 : 1, PRODUCTION, 0.005, saturation);
      sink += steps.content(h % ROOMS);
    }
    return (long) HOURS * ROOMS;
  }

  private static long bareHours() {
    double[] lu = Bare.matrix(0.02);
    for (int i = 0; i < ROOMS; i++) {
      lu[i * ROOMS + i] += 300.0 / 3600;
    }
    Bare.factorise(lu, ROOMS);
    double[] v = new double[ROOMS];
    for (int h = 0; h < HOURS; h++) {
      for (int i = 0; i < ROOMS; i++) {
        v[i] = 300.0 / 3600 * v[i] + 1.2e-5 + 0.0025 * 0.005;
      }
      Bare.solve(lu, v, ROOMS);
      sink += v[h % ROOMS];
    }
    return (long) HOURS * ROOMS;
  }

  /** The recurrence on plain arrays. */
  private static final class Bare {
    static double[] matrix(double air) {
      double[] matrix = new double[ROOMS * ROOMS];
      for (int i = 0; i < ROOMS; i++) {
        matrix[i * ROOMS + i] = air / ROOMS + (i == 0 ? (ROOMS - 1) * 0.01 : 0.01);
        if (i > 0) {
          matrix[i] = -0.01;
          matrix[i * ROOMS] = -0.01;
        }
      }
      return matrix;
    }

    static void factorise(double[] a, int n) {
      for (int k = 0; k < n; k++) {
        for (int i = k + 1; i < n; i++) {
          double factor = a[i * n + k] / a[k * n + k];
          a[i * n + k] = factor;
          for (int j = k + 1; j < n; j++) {
            a[i * n + j] -= factor * a[k * n + j];
          }
        }
      }
    }

    static void solve(double[] a, double[] x, int n) {
      for (int i = 1; i < n; i++) {
        for (int j = 0; j < i; j++) {
          x[i] -= a[i * n + j] * x[j];
        }
      }
      for (int i = n - 1; i >= 0; i--) {
        for (int j = i + 1; j < n; j++) {
          x[i] -= a[i * n + j] * x[j];
        }
        x[i] /= a[i * n + i];
      }
    }
  }
}
