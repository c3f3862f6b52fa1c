package org.drysill.physics;

/**
 * A value that is not known exactly: the likely one and the bounds around it. The unit is that of
 * whoever holds it.
 *
 * @param low the lowest value, at most {@code likely}
 * @param likely the likely value
 * @param high the highest value, at least {@code likely}
 */
public record Range(double low, double likely, double high) {
  /** Refuses what is not a range around a number; NaN too. */
  public Range {
    if (!(low <= likely && likely <= high)) {
      throw new IllegalArgumentException(
          "expected low <= likely <= high but was " + low + ", " + likely + ", " + high);
    }
  }

  /** A value without spread. */
  public static Range exactly(double value) {
    return new Range(value, value, value);
  }

  /** A value give or take an uncertainty of the same unit, at least 0. */
  public static Range around(double value, double uncertainty) {
    return new Range(value - uncertainty, value, value + uncertainty);
  }

  /** The sum of two independent worst cases. */
  public Range plus(Range other) {
    return new Range(low + other.low, likely + other.likely, high + other.high);
  }

  /** The difference of two independent worst cases. */
  public Range minus(Range other) {
    return new Range(low - other.high, likely - other.likely, high - other.low);
  }

  /** The product with a number of either sign. */
  public Range times(double factor) {
    return factor >= 0
        ? new Range(low * factor, likely * factor, high * factor)
        : new Range(high * factor, likely * factor, low * factor);
  }

  /** The product of two ranges that are both at least 0. */
  public Range times(Range other) {
    return new Range(low * other.low, likely * other.likely, high * other.high);
  }

  /** The quotient of two ranges, this at least 0 and the divisor above 0. */
  public Range dividedBy(Range divisor) {
    return new Range(low / divisor.high, likely / divisor.likely, high / divisor.low);
  }

  /** True where the bounds differ. */
  public boolean isSpread() {
    return low < high;
  }
}
