package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Picks the best packages by how sure they are.
 *
 * @param finalists which are looked at
 * @param order in which order they stand then
 */
record SureBest(Finalists finalists, SureOrder order) {
  /** The best of those that fit; empty where none does. */
  Optional<PackValue> of(Predicate<PackValue> fits) {
    return several(fits, 1).stream().findFirst();
  }

  /** The best chance of enough air and sound walls among those that fit [1]. */
  double surest(Predicate<PackValue> fits) {
    return order.surest(finalists.of(fits));
  }

  /** The best that fit, best first, without those that only add something to a better one. */
  List<PackValue> several(Predicate<PackValue> fits, int most) {
    List<PackValue> several = new ArrayList<>();
    for (PackValue value : order.ranked(finalists.of(fits))) {
      boolean adds = several.stream().anyMatch(b -> value.members().isMoreThan(b.members()));
      if (several.size() < most && !adds) {
        several.add(value);
      }
    }
    return several;
  }
}
