package org.drysill.report.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A linear axis.
 *
 * @param min the value at its start
 * @param max the value at its end, above {@code min}
 * @param ticks the labelled places within it
 */
public record Axis(double min, double max, List<Tick> ticks) {
  /** Copies the list and refuses an axis without length. */
  public Axis {
    if (!(min < max)) {
      throw new IllegalArgumentException("an axis from " + min + " to " + max + " has no length");
    }
    ticks = List.copyOf(ticks);
  }

  /**
   * An axis that holds both values, with ticks at round numbers (1, 2 or 5 times a power of ten).
   *
   * @param low the least value to be shown
   * @param high the greatest value to be shown, at least {@code low}
   * @param intervals about how many intervals between ticks
   */
  public static Axis around(double low, double high, int intervals) {
    BigDecimal step = roundStep(high > low ? (high - low) / intervals : 1.0);
    long first = (long) Math.floor(low / step.doubleValue() + TOLERANCE);
    long last = (long) Math.ceil(high / step.doubleValue() - TOLERANCE);
    List<Tick> ticks = new ArrayList<>();
    for (long i = first; i <= Math.max(last, first + 1); i++) {
      BigDecimal at = step.multiply(BigDecimal.valueOf(i));
      ticks.add(new Tick(at.doubleValue(), printed(at)));
    }
    return new Axis(ticks.get(0).at(), ticks.get(ticks.size() - 1).at(), ticks);
  }

  /** An axis from zero to at least the value, with ticks at round numbers. */
  public static Axis fromZero(double high, int intervals) {
    return around(0, high, intervals);
  }

  /** The share of the axis, 0 at its start and 1 at its end, that lies before the value. */
  double share(double value) {
    return (value - min) / (max - min);
  }

  private static final double TOLERANCE = 1e-9;

  private static BigDecimal roundStep(double raw) {
    int power = (int) Math.floor(Math.log10(raw));
    double mantissa = raw / Math.pow(10, power);
    int digit = mantissa < 1.5 ? 1 : mantissa < 3.5 ? 2 : mantissa < 7.5 ? 5 : 10;
    return BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
  }

  private static String printed(BigDecimal value) {
    BigDecimal plain = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
    return plain.toPlainString().replace('-', '\u2212');
  }
}
