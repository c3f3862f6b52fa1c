package org.drysill.physics.tracer;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Readings of a tracer in one room in the order of time: its concentration above the background (of
 * outdoor air), the background itself and the weight of each reading. Steps may be irregular. A
 * reading whose excess is NaN is missing and left out; the gap that it leaves stays visible in the
 * times. The unit of concentration is the caller's, one for excess and background.
 */
public final class TracerSeries {
  private final double[] hours;
  private final double[] excess;
  private final double[] background;
  private final double[] weights;

  private TracerSeries(
      double[] hours, double[] excess, double[] background, double[] weights, int[] present) {
    this.hours = picked(hours, present);
    this.excess = picked(excess, present);
    this.background = picked(background, present);
    this.weights = picked(weights, present);
  }

  /** Readings of equal weight over a background that nobody read. */
  public static TracerSeries of(double[] hours, double[] excess) {
    double[] ones = new double[hours.length];
    Arrays.fill(ones, 1);
    return of(hours, excess, new double[hours.length], ones);
  }

  /**
   * Readings with their weights.
   *
   * @param hours times [h], each after the one before
   * @param excess concentration above the background; NaN where it is missing
   * @param background what was taken off at each time; all alike where it was not read
   * @param weights how many plain readings each stands for, above 0
   * @throws IllegalArgumentException where lengths differ or times do not rise
   */
  public static TracerSeries of(
      double[] hours, double[] excess, double[] background, double[] weights) {
    requireSameLength(hours, excess, background, weights);
    int[] present =
        IntStream.range(0, hours.length).filter(i -> !Double.isNaN(excess[i])).toArray();
    TracerSeries series = new TracerSeries(hours, excess, background, weights, present);
    series.requireSound();
    return series;
  }

  private static void requireSameLength(double[] hours, double[]... others) {
    for (double[] other : others) {
      if (other.length != hours.length) {
        throw new IllegalArgumentException(
            "expected " + hours.length + " values but was " + other.length);
      }
    }
  }

  private void requireSound() {
    for (int i = 0; i < hours.length; i++) {
      boolean finite =
          Double.isFinite(hours[i]) && Double.isFinite(excess[i]) && Double.isFinite(background[i]);
      if (!finite || !(weights[i] > 0 && Double.isFinite(weights[i]))) {
        throw new IllegalArgumentException("reading " + i + " is not finite or has no weight");
      }
      if (i > 0 && hours[i] <= hours[i - 1]) {
        throw new IllegalArgumentException(
            "times must rise but " + hours[i] + " h follows " + hours[i - 1] + " h");
      }
    }
  }

  private static double[] picked(double[] values, int[] present) {
    return Arrays.stream(present).mapToDouble(i -> values[i]).toArray();
  }

  /** How many readings are present. */
  public int size() {
    return hours.length;
  }

  /** Time of a reading [h]. */
  public double hour(int index) {
    return hours[index];
  }

  /** Excess of a reading. */
  public double excess(int index) {
    return excess[index];
  }

  /** How far the background moved within a stretch, highest less lowest. */
  double backgroundMoved(int from, int to) {
    double[] part = Arrays.copyOfRange(background, from, to + 1);
    return Arrays.stream(part).max().orElse(0) - Arrays.stream(part).min().orElse(0);
  }

  /** Times, excesses and weights of the readings from one index to another, both included. */
  double[][] part(int from, int to) {
    return new double[][] {
      Arrays.copyOfRange(hours, from, to + 1),
      Arrays.copyOfRange(excess, from, to + 1),
      Arrays.copyOfRange(weights, from, to + 1)
    };
  }

  /** Copies of the times [h]. */
  public double[] hours() {
    return hours.clone();
  }

  /** Copies of the weights. */
  public double[] weights() {
    return weights.clone();
  }

  /** Copies of the excesses. */
  public double[] excesses() {
    return excess.clone();
  }
}
