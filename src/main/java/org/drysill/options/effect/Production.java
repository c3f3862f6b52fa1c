package org.drysill.options.effect;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.physics.Range;

/**
 * The water that a home gives off, from the list of its sources and from what its readings imply,
 * where both are known: their mean in logarithms, each weighted by the inverse square of its own
 * spread. Neither alone will do: a list forgets sources, and readings multiply by an air flow that
 * is often a guess. Where the list names no water at all, as in an empty home, the readings stand.
 *
 * <pre>ln G = Σ (ln Gi / σi²) / Σ (1 / σi²),  σi = ln(high / low) / 4</pre>
 */
final class Production {
  /** A range from low to high is taken as four standard deviations of the logarithm. */
  private static final double DEVIATIONS = 4;

  private Production() {}

  /** The figure [kg/s]. */
  static Figure of(MoistureResult moisture) {
    Figure listed = moisture.itemised();
    return moisture
        .implied()
        .filter(i -> weighable(i.value()) && weighable(listed.value()))
        .map(i -> both(listed, i))
        .or(() -> moisture.implied().filter(i -> listed.likely() <= 0))
        .orElse(listed);
  }

  private static Figure both(Figure listed, Figure implied) {
    return new Figures("production")
        .of(
            "likely",
            "water given off, by the list of sources and by the readings",
            combined(listed.value(), implied.value()),
            Unit.MASS_RATE,
            "ln G = Σ (ln Gi / σi²) / Σ (1 / σi²), σi = ln(high / low) / 4",
            List.of(Input.of("G1", listed), Input.of("G2", implied)),
            List.of());
  }

  static Range combined(Range a, Range b) {
    double weightA = 1 / square(spread(a));
    double weightB = 1 / square(spread(b));
    double all = weightA + weightB;
    double mean = (weightA * Math.log(a.likely()) + weightB * Math.log(b.likely())) / all;
    double half = DEVIATIONS / 2 / Math.sqrt(all);
    return new Range(Math.exp(mean - half), Math.exp(mean), Math.exp(mean + half));
  }

  private static boolean weighable(Range range) {
    return range.low() > 0 && range.isSpread();
  }

  private static double spread(Range range) {
    return Math.log(range.high() / range.low()) / DEVIATIONS;
  }

  private static double square(double value) {
    return value * value;
  }
}
