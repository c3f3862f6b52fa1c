package org.drysill.report.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.report.block.Bar;

/** Bars within tables, in percent of the width of their cell. */
public final class Bars {
  private static final double ROOM_AT_END = 1.12;

  private Bars() {}

  /**
   * A bar to the likely value, with its range and what is asked; empty where a value is negative.
   *
   * @param value what is there
   * @param asked what is asked, in the same unit
   * @param words both in words
   */
  public static Optional<Bar> of(Range value, Optional<Double> asked, String words) {
    return of(value, asked, Math.max(value.high(), asked.orElse(0.0)) * ROOM_AT_END, words);
  }

  /**
   * A bar on a scale that it shares with others; empty where a value is negative.
   *
   * @param most the greatest of all, in the same unit
   * @param words the value in words
   */
  public static Optional<Bar> among(Range value, double most, String words) {
    return of(value, Optional.empty(), most, words);
  }

  private static Optional<Bar> of(Range value, Optional<Double> asked, double most, String words) {
    if (value.low() < 0 || !(most > 0) || Double.isInfinite(most)) {
      return Optional.empty();
    }
    return Optional.of(
        new Bar(
            share(value.likely(), most),
            share(value.low(), most),
            share(value.high() - value.low(), most),
            asked.map(a -> share(a, most)).orElse(""),
            words));
  }

  private static String share(double value, double most) {
    return BigDecimal.valueOf(100 * value / most).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}
