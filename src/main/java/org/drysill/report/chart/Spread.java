package org.drysill.report.chart;

import java.util.Arrays;
import java.util.Comparator;

/** Moves labels apart that would touch, as little as need be. */
final class Spread {
  private Spread() {}

  /**
   * Places in the order of the wanted ones, at least a distance apart and within bounds where these
   * leave room.
   */
  static double[] apart(double[] wanted, double distance, double low, double high) {
    Integer[] order = new Integer[wanted.length];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble(i -> wanted[i]));
    double[] places = wanted.clone();
    // Halving each overlap time and again settles on a shared middle.
    for (int round = 0; round < 200; round++) {
      for (int i = 1; i < order.length; i++) {
        double overlap = distance - (places[order[i]] - places[order[i - 1]]);
        if (overlap > 0) {
          places[order[i - 1]] -= overlap / 2;
          places[order[i]] += overlap / 2;
        }
      }
    }
    shift(places, low, high);
    return places;
  }

  private static void shift(double[] places, double low, double high) {
    double least = Arrays.stream(places).min().orElse(low);
    double greatest = Arrays.stream(places).max().orElse(high);
    double by = least < low ? low - least : greatest > high ? high - greatest : 0;
    for (int i = 0; i < places.length; i++) {
      places[i] += by;
    }
  }
}
