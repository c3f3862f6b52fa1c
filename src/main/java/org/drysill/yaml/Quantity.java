package org.drysill.yaml;

import org.drysill.physics.Range;

/**
 * A number as a file gives it, converted once to the unit in which its {@link Dimension} is kept
 * (SI; temperatures in °C, humidities and percentages as ratios, air changes per hour).
 *
 * @param value the likely value; the middle where only a range was written
 * @param low the lowest value: of the range, or value minus the stated uncertainty
 * @param high the highest value
 * @param written the words of the file, such as {@code 11 l/s} or {@code 8..12 /h}
 */
public record Quantity(double value, double low, double high, String written) {
  /** Refuses what is not a range around a number. */
  public Quantity {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          "expected low <= value <= high but was " + low + ", " + value + ", " + high);
    }
  }

  /** True where the file gave a range or an uncertainty. */
  public boolean isRange() {
    return low < high;
  }

  /** The same as a range, without the words. */
  public Range range() {
    return new Range(low, value, high);
  }
}
