package org.drysill.survey.log;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * Single readings through the cycles of a heat recovery unit, in the order of time. Nothing is
 * averaged: a cycle lasts about two minutes, and its shape is what matters.
 */
public final class CycleSamples {
  private static final double MS = 1000;

  private final long[] ms;
  private final Map<LogQuantity, double[]> values = new EnumMap<>(LogQuantity.class);

  /**
   * Readings.
   *
   * @param ms when they were taken [ms since 1970-01-01T00:00Z], each later than the one before
   * @param values of each column that the log has [°C; flow in its own unit]; NaN where a reading
   *     lacks it
   */
  public CycleSamples(long[] ms, Map<LogQuantity, double[]> values) {
    this.ms = ms.clone();
    values.forEach((quantity, column) -> this.values.put(quantity, column.clone()));
  }

  /** Number of readings. */
  public int size() {
    return ms.length;
  }

  /** Times since the first reading [s]. */
  public double[] seconds() {
    return Arrays.stream(ms).mapToDouble(at -> (at - ms[0]) / MS).toArray();
  }

  /** A column; empty where the log lacks it. */
  public Optional<double[]> column(LogQuantity quantity) {
    return Optional.ofNullable(values.get(quantity)).map(double[]::clone);
  }
}
