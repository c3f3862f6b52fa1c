package org.drysill.report.words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * To which side a printed number may err. What is compared with a limit errs towards failing: what
 * is there is rounded away from the limit that it should reach, and the limit away from it.
 */
public enum Rounding {
  /** To the nearest printed value, halves away from zero. */
  NEAREST,
  /** To the printed value below. */
  DOWN,
  /** To the printed value above. */
  UP;

  // What binary arithmetic adds to a number that is exact in print must not move it by a step.
  private static final double NOISE = 1e-9;

  BigDecimal apply(double value, int decimals) {
    double noise = Math.max(1, Math.abs(value)) * NOISE;
    return switch (this) {
      case NEAREST ->
          BigDecimal.valueOf(value + Math.copySign(noise, value))
              .setScale(decimals, RoundingMode.HALF_UP);
      case DOWN -> BigDecimal.valueOf(value + noise).setScale(decimals, RoundingMode.FLOOR);
      case UP -> BigDecimal.valueOf(value - noise).setScale(decimals, RoundingMode.CEILING);
    };
  }
}
