package org.drysill.assess.surfaces.year;

import java.util.function.ToDoubleFunction;
import org.drysill.physics.Range;

/**
 * A year at the favourable, the likely and the unfavourable end of what is known.
 *
 * @param best with the best factor and the least vapour
 * @param likely as it is likely
 * @param worst with the worst factor and the most vapour
 */
record Three<T>(T best, T likely, T worst) {
  /** A count of the three; the likely one is never outside its bounds. */
  Range spread(ToDoubleFunction<T> value) {
    double middle = value.applyAsDouble(likely);
    return new Range(
        Math.min(value.applyAsDouble(best), middle),
        middle,
        Math.max(value.applyAsDouble(worst), middle));
  }
}
