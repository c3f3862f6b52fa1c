package org.drysill.options.packs;

import java.util.Arrays;

/**
 * All sets of members of which no two exclude each other, as bit sets, in a fixed order that begins
 * with the empty one.
 */
final class Subsets {
  private final long[] against;
  private final int most;
  private long[] found = new long[64];
  private int count;

  private Subsets(long[] against, int most) {
    this.against = against;
    this.most = most;
  }

  /**
   * The sets.
   *
   * @param against of each member the bits of those that it excludes; at most 62 members
   * @param most stops as soon as there are more
   */
  static long[] of(long[] against, int most) {
    Subsets subsets = new Subsets(against, most);
    subsets.from(0, 0, 0);
    return Arrays.copyOf(subsets.found, subsets.count);
  }

  private void from(int next, long chosen, long barred) {
    if (count > most) {
      return;
    }
    add(chosen);
    for (int i = next; i < against.length; i++) {
      if ((barred & (1L << i)) == 0) {
        from(i + 1, chosen | (1L << i), barred | against[i]);
      }
    }
  }

  private void add(long chosen) {
    if (count == found.length) {
      found = Arrays.copyOf(found, 2 * count);
    }
    found[count++] = chosen;
  }
}
