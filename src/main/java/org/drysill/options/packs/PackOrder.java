package org.drysill.options.packs;

import java.util.Comparator;
import java.util.function.ToIntFunction;

/**
 * In which order packages deserve the money. Later steps count only where all earlier ones are
 * equal.
 *
 * @param lacksToday outdoor air that the home lacks today [m³/s]
 * @param mouldToday months at risk of mould today
 * @param step coarseness in which packages that do not reach the goal are compared [1]
 */
record PackOrder(double lacksToday, int mouldToday, double step) {
  /** Less air than this is none: a thousandth of a litre a second. */
  static final double NO_AIR = 1e-6;

  /** True where air and walls are likely as they should be. */
  boolean reaches(PackValue value) {
    return value.lacks() <= NO_AIR && value.mould() == 0;
  }

  /** Share of what is lacking that it closes [1]. */
  double progress(PackValue value) {
    int open = (lacksToday > NO_AIR ? 1 : 0) + (mouldToday > 0 ? 1 : 0);
    double air = lacksToday > NO_AIR ? 1 - value.lacks() / lacksToday : 0;
    double mould = mouldToday > 0 ? 1 - (double) value.mould() / mouldToday : 0;
    return open == 0 ? 0 : (air + mould) / open;
  }

  /** Progress in whole steps. */
  long steps(PackValue value) {
    // A hair is added so that a share of exactly one step counts as reached.
    return reaches(value) ? Long.MAX_VALUE : (long) Math.floor(progress(value) / step + 1e-9);
  }

  /** Best first; the bits decide between packages that are alike in all else. */
  Comparator<PackValue> comparator() {
    return Comparator.comparing((PackValue v) -> !v.safe())
        .thenComparing(Comparator.comparingLong(this::steps).reversed())
        .thenComparing(alike(PackValue::wet));
  }

  /**
   * The steps that decide between packages that go as far.
   *
   * @param wet how long glass is wet
   */
  Comparator<PackValue> alike(ToIntFunction<PackValue> wet) {
    return Comparator.comparing(PackValue::stopGap)
        .thenComparingDouble(v -> v.bill().annual())
        .thenComparingInt(wet)
        .thenComparingDouble(v -> v.bill().first())
        .thenComparingInt(PackValue::size)
        .thenComparingLong(v -> v.members().air())
        .thenComparingLong(v -> v.members().fabric());
  }
}
