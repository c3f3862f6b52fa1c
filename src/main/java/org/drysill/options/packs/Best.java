package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/** Picks from all packages of a home. */
record Best(Packages packages, PackOrder order) {
  /** So many of the best are looked through for those that do not only add to a better one. */
  private static final int LOOKED_THROUGH = 2000;

  /** The best of those that fit; empty where none does. */
  Optional<PackValue> of(Predicate<PackValue> fits) {
    return first(fits, order.comparator());
  }

  /** The first of those that fit in an order of their own. */
  Optional<PackValue> first(Predicate<PackValue> fits, Comparator<PackValue> by) {
    List<PackValue> best = new ArrayList<>();
    packages.each(
        v -> {
          if (fits.test(v) && (best.isEmpty() || by.compare(v, best.get(0)) < 0)) {
            best.clear();
            best.add(v);
          }
        });
    return best.stream().findFirst();
  }

  /** The best that fit, best first, without those that only add something to a better one. */
  List<PackValue> several(Predicate<PackValue> fits, int most) {
    Comparator<PackValue> by = order.comparator();
    PriorityQueue<PackValue> worstFirst = new PriorityQueue<>(by.reversed());
    packages.each(
        v -> {
          if (fits.test(v)
              && (worstFirst.size() < LOOKED_THROUGH || by.compare(v, worstFirst.peek()) < 0)) {
            worstFirst.add(v);
            if (worstFirst.size() > LOOKED_THROUGH) {
              worstFirst.remove();
            }
          }
        });
    List<PackValue> several = new ArrayList<>();
    for (PackValue value : worstFirst.stream().sorted(by).toList()) {
      boolean adds = several.stream().anyMatch(b -> value.members().isMoreThan(b.members()));
      if (several.size() < most && !adds) {
        several.add(value);
      }
    }
    return several;
  }

  /** The front of those that fit. */
  List<PackValue> front(Predicate<PackValue> fits) {
    Pareto pareto = new Pareto();
    packages.each(
        v -> {
          if (fits.test(v)) {
            pareto.take(v);
          }
        });
    return pareto.front();
  }
}
