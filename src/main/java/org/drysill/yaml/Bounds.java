package org.drysill.yaml;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import org.drysill.yaml.ProblemList.Finding;
import org.drysill.yaml.units.Units;

/** Holds numbers against what their key calls possible and plausible. */
final class Bounds {
  /** Relative slack for values that were converted from another unit than the bounds. */
  private static final double SLACK = 1e-9;

  /** Years as the schema has them too; any other is a slip of the pen. */
  private static final int FIRST_YEAR = 1900;

  private static final int LAST_YEAR = 2099;

  /** Numbers of more digits are written with a power of ten. */
  private static final int MOST_DIGITS = 15;

  private Bounds() {}

  /** Complains about an impossible value and returns false; complains about an odd one. */
  static boolean isPossible(
      double low, double value, double high, Spot spot, Complaints complaints) {
    Key key = spot.key();
    if (isBelow(low, kept(key, key.min())) || isBelow(kept(key, key.max()), high)) {
      complaints.add(YamlCode.IMPOSSIBLE, spot, finding(key, value, key.min(), key.max(), false));
      return false;
    }
    if (isBelow(low, kept(key, key.low())) || isBelow(kept(key, key.high()), high)) {
      complaints.add(YamlCode.IMPLAUSIBLE, spot, finding(key, value, key.low(), key.high(), true));
    }
    return true;
  }

  /** Complains about a day of no year in which anybody takes readings, and returns false. */
  static boolean isPossible(LocalDate day, Spot spot, Complaints complaints) {
    if (day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR) {
      return true;
    }
    complaints.add(
        YamlCode.IMPOSSIBLE,
        spot,
        Finding.of(
            day.toString(),
            Expectation.about(spot.key())
                + "a day of the years "
                + FIRST_YEAR
                + " to "
                + LAST_YEAR));
    return false;
  }

  /** The bound of what is possible, in the kept unit. */
  static double kept(Key key, double bound) {
    return Double.isInfinite(bound) ? bound : Units.toKept(key.dimension(), key.unit(), bound);
  }

  private static boolean isBelow(double value, double bound) {
    return value < bound - SLACK * Math.abs(bound);
  }

  private static Finding finding(Key key, double value, double low, double high, boolean usual) {
    double shown = Units.fromKept(key.dimension(), key.unit(), value);
    String range;
    if (low == high) {
      range = number(low);
    } else if (Double.isInfinite(high)) {
      range = "at least " + number(low);
    } else if (Double.isInfinite(low)) {
      range = "at most " + number(high);
    } else {
      range = number(low) + " to " + number(high);
    }
    String unit = key.unit().isEmpty() || key.unit().equals("1") ? "" : " " + key.unit();
    return Finding.of(
        number(shown) + unit,
        Expectation.about(key) + range + unit + (usual ? ", as is usual" : ""));
  }

  static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
    boolean endless = Math.abs(rounded.precision() - rounded.scale()) > MOST_DIGITS;
    return endless ? rounded.toString() : rounded.toPlainString();
  }
}
