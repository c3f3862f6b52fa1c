package org.drysill.physics;

/**
 * The ends of a formula's valid range: what lies outside is refused with its name, its value and
 * the bound that it misses. NaN lies outside every range, so it never enters a formula.
 */
public final class Bounds {
  private Bounds() {}

  /** The value, where {@code low <= value <= high}. */
  public static double inside(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " must be from " + low + " to " + high + " but was " + value);
    }
    return value;
  }

  /** The value, where it is finite and {@code value >= low}. */
  public static double atLeast(String name, double value, double low) {
    if (!(value >= low && Double.isFinite(value))) {
      throw new IllegalArgumentException(name + " must be at least " + low + " but was " + value);
    }
    return value;
  }

  /** The value, where it is finite and {@code value > low}. */
  public static double above(String name, double value, double low) {
    if (!(value > low && Double.isFinite(value))) {
      throw new IllegalArgumentException(name + " must be above " + low + " but was " + value);
    }
    return value;
  }

  /** The value, where it is a finite number. */
  public static double finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be a finite number but was " + value);
    }
    return value;
  }
}
