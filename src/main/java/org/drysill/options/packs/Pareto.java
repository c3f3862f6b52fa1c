package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The packages of which no other is at most as dear a year, leaves at most as many months of mould
 * and lacks at most as much air, and is better in one of the three.
 */
final class Pareto {
  private final List<PackValue> front = new ArrayList<>();

  /** Takes a package in, where nothing taken so far beats it. */
  void take(PackValue value) {
    for (PackValue other : front) {
      if (isAtMost(other, value)) {
        return;
      }
    }
    front.removeIf(other -> isAtMost(value, other));
    front.add(value);
  }

  /** The front by cost. */
  List<PackValue> front() {
    return front.stream()
        .sorted(
            Comparator.comparingDouble((PackValue v) -> v.bill().annual())
                .thenComparingInt(PackValue::mould)
                .thenComparingDouble(PackValue::lacks))
        .toList();
  }

  private static boolean isAtMost(PackValue one, PackValue other) {
    return one.bill().annual() <= other.bill().annual()
        && one.mould() <= other.mould()
        && one.lacks() <= other.lacks();
  }
}
