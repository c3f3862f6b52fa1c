package org.drysill.options.money;

import org.drysill.physics.Range;

/** Arithmetic of ranges that may lie on both sides of 0. */
final class Signed {
  private Signed() {}

  /** The product of a range of either sign with one that is at least 0. */
  static Range product(Range any, Range positive) {
    double likely = any.likely() * positive.likely();
    double low = Math.min(any.low() * positive.low(), any.low() * positive.high());
    double high = Math.max(any.high() * positive.low(), any.high() * positive.high());
    return new Range(Math.min(low, likely), likely, Math.max(high, likely));
  }
}
