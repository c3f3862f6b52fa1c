package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drysill.options.packs.PackValue.Bits;

/**
 * In which order the measures of a package are done: what another needs before it, and each time
 * the one after which most of what is lacking is closed; among equals the cheaper a year.
 */
record OrderOfWorks(Packages packages, PackOrder order) {
  /** The package after each of its steps, the whole one last. */
  List<PackValue> of(Bits members) {
    List<PackValue> steps = new ArrayList<>();
    Bits done = new Bits(0, 0);
    while (!done.equals(members)) {
      PackValue next = next(done, members);
      steps.add(next);
      done = next.members();
    }
    return steps;
  }

  private PackValue next(Bits done, Bits members) {
    List<PackValue> open = new ArrayList<>();
    for (int i = 0; i < Long.SIZE; i++) {
      long bit = 1L << i;
      if ((members.air() & ~done.air() & bit) != 0) {
        open.add(packages.of(new Bits(done.air() | bit, done.fabric())));
      }
      if ((members.fabric() & ~done.fabric() & bit) != 0) {
        open.add(packages.of(new Bits(done.air(), done.fabric() | bit)));
      }
    }
    List<PackValue> whole = open.stream().filter(v -> packages.isWhole(v.members())).toList();
    return (whole.isEmpty() ? open : whole)
        .stream()
            .min(
                Comparator.comparingDouble((PackValue v) -> -order.progress(v))
                    .thenComparingDouble(v -> v.bill().annual())
                    .thenComparingInt(PackValue::wet)
                    .thenComparingLong(v -> v.members().air())
                    .thenComparingLong(v -> v.members().fabric()))
            .orElseThrow();
  }
}
