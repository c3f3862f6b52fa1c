package org.drysill.physics.network;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Finds the pressures of a network by Newton's method. The negative derivative of the balances is
 * symmetric and positive definite; a step that does not bring all rooms together nearer to balance
 * is halved.
 */
final class NewtonBalance {
  private static final int MOST_STEPS = 500;
  private static final int MOST_HALVINGS = 40;

  /** Imbalance at which nothing is left to do [m³/s]: far below what rounding leaves of a flow. */
  private static final double CLOSED = 1e-16;

  private final AirNetwork network;
  private final int rooms;

  NewtonBalance(AirNetwork network) {
    this.network = network;
    this.rooms = network.supplyM3S().size();
  }

  Pressures solve() {
    double[] pressures = new double[rooms];
    double left = size(imbalances(pressures));
    for (int step = 0; step < MOST_STEPS && left > CLOSED; step++) {
      double[] nearer = step(pressures, left);
      double then = size(imbalances(nearer));
      if (then >= left) {
        break;
      }
      pressures = nearer;
      left = then;
    }
    return new Pressures(Arrays.stream(pressures).boxed().toList());
  }

  private double[] step(double[] pressures, double left) {
    double[] direction = Cholesky.solve(slopes(pressures), imbalances(pressures));
    double length = 1;
    double[] next = along(pressures, direction, length);
    for (int i = 0; i < MOST_HALVINGS && size(imbalances(next)) >= left; i++) {
      length /= 2;
      next = along(pressures, direction, length);
    }
    return next;
  }

  private static double[] along(double[] from, double[] direction, double length) {
    double[] to = from.clone();
    for (int i = 0; i < to.length; i++) {
      to[i] += length * direction[i];
    }
    return to;
  }

  /** What comes into each room less what leaves it [m³/s]. */
  private double[] imbalances(double[] pressures) {
    double[] sums = network.supplyM3S().stream().mapToDouble(Double::doubleValue).toArray();
    for (AirNetwork.Outside way : network.outside()) {
      sums[way.room()] += way.path().flowM3S(way.outsidePa() - pressures[way.room()]);
    }
    for (AirNetwork.Between way : network.between()) {
      double flow = way.path().flowM3S(pressures[way.from()] - pressures[way.to()]);
      sums[way.from()] -= flow;
      sums[way.to()] += flow;
    }
    return sums;
  }

  private double[][] slopes(double[] pressures) {
    double[][] matrix = new double[rooms][rooms];
    for (AirNetwork.Outside way : network.outside()) {
      matrix[way.room()][way.room()] += way.path().slope(way.outsidePa() - pressures[way.room()]);
    }
    for (AirNetwork.Between way : network.between()) {
      int a = way.from();
      int b = way.to();
      double slope = way.path().slope(pressures[a] - pressures[b]);
      matrix[a][a] += slope;
      matrix[b][b] += slope;
      matrix[a][b] -= slope;
      matrix[b][a] -= slope;
    }
    return matrix;
  }

  private static double size(double[] values) {
    return Math.sqrt(DoubleStream.of(values).map(v -> v * v).sum());
  }
}
