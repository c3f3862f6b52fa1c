package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * In which order packages deserve the money once it is known how sure they are. Later steps count
 * only where all earlier ones are equal.
 *
 * @param order the order at the likely values
 * @param mornings mornings in a year with wet glass, likely
 * @param chances the chance of enough air and sound walls of a package [1]
 * @param sure the chance from which one counts as sure [1]
 * @param step chances that differ by less count as the same where none is sure [1]
 */
record SureOrder(
    PackOrder order,
    ToIntFunction<PackValue> mornings,
    ToDoubleFunction<PackValue> chances,
    double sure,
    double step) {
  private static final double HAIR = 1e-9;

  /** The rule in plain sentences. */
  List<String> rule() {
    return List.of(
        "A package that is safe as the home stands comes before one that needs a safety test"
            + " first.",
        "Then comes one that is sure: with all that is not known, it gives the home the air that"
            + " is asked and leaves no month at risk of mould on walls, corners and reveals in at"
            + " least "
            + Math.round(100 * sure)
            + " of 100 cases.",
        "Where none is so sure, those come first that stay no more than "
            + Math.round(100 * step)
            + " cases in 100 behind the one with the best chance; where none has more than that,"
            + " those that likely close more of what is lacking, in tenths.",
        "Among those that go as far one with a stop-gap comes last.",
        "Then the lower yearly cost over the horizon, then fewer mornings in a year on which the"
            + " wettest window is seen to be wet, then the lower first cost, then fewer measures.");
  }

  /** The chance of enough air and sound walls [1]. */
  double chance(PackValue value) {
    return chances.applyAsDouble(value);
  }

  /** Best first among some packages: each is the best of those that are left. */
  List<PackValue> ranked(List<PackValue> some) {
    List<PackValue> left = new ArrayList<>(some);
    List<PackValue> ranked = new ArrayList<>();
    while (!left.isEmpty()) {
      PackValue best = Collections.min(left, among(left));
      left.remove(best);
      ranked.add(best);
    }
    return ranked;
  }

  private Comparator<PackValue> among(List<PackValue> left) {
    double enough = enough(surest(left));
    Comparator<PackValue> first = Comparator.comparing(v -> !v.safe());
    return enough > 0
        ? first.thenComparing(v -> chance(v) < enough).thenComparing(order.alike(mornings))
        : first
            .thenComparing(Comparator.comparingLong((PackValue v) -> order.steps(v)).reversed())
            .thenComparing(order.alike(mornings));
  }

  /** The best chance among some packages: of those that are safe, where any is [1]. */
  double surest(List<PackValue> some) {
    boolean safe = some.stream().anyMatch(PackValue::safe);
    return some.stream().filter(v -> v.safe() || !safe).mapToDouble(this::chance).max().orElse(0);
  }

  /**
   * The chance that is enough to go by cost, where the best is so great [1]: that of being sure
   * where one is, else a step less than the best; 0 and less where that is none.
   */
  double enough(double best) {
    // A hair less, so that a package exactly a step behind is not lost to the last digit.
    return asGood(best) - HAIR;
  }

  /** The same as a number of cases in 100. */
  long casesEnough(double best) {
    return Math.round(100 * asGood(best) + HAIR);
  }

  private double asGood(double best) {
    return best >= sure ? sure : best - step;
  }
}
