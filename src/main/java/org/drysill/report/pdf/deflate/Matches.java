package org.drysill.report.pdf.deflate;

import java.util.Arrays;

/** What stood before, for each place of a stretch of the content: ever longer, ever further off. */
final class Matches {
  /**
   * A match this long is taken as it is: to look at what is within it costs time and gains none.
   */
  static final int LONG_ENOUGH = 80;

  /** Within a long match few places are worth finding again, but for those at its end. */
  private static final int EVERY_FOURTH = 3;

  private static final int TAIL = 40;

  private static final int LENGTH_SHIFT = 16;

  private final int from;
  private final int[] first;
  private int[] all = new int[1 << 16];
  private int size;

  private Matches(int from, int to) {
    this.from = from;
    this.first = new int[to - from + 1];
  }

  /** The matches of a stretch; the tree knows all places before it. */
  static Matches of(MatchTree tree, int from, int to) {
    Matches matches = new Matches(from, to);
    int within = 0;
    for (int at = from; at < to; at++) {
      int start = matches.size;
      boolean isWithin = at < within;
      if (!isWithin || within - at <= TAIL || (at & EVERY_FOURTH) == 0) {
        int longest = tree.find(at, matches);
        if (isWithin) {
          matches.size = start;
        } else if (longest >= LONG_ENOUGH) {
          within = at + longest;
        }
      }
      matches.first[at - from + 1] = matches.size;
    }
    return matches;
  }

  void add(int length, int distance) {
    if (size == all.length) {
      all = Arrays.copyOf(all, 2 * size);
    }
    all[size++] = length << LENGTH_SHIFT | distance;
  }

  /** Where the list of a place begins; it ends where that of the next begins. */
  int first(int at) {
    return first[at - from];
  }

  /** A match by its index. */
  int get(int index) {
    return all[index];
  }

  static int length(int match) {
    return match >>> LENGTH_SHIFT;
  }

  static int distance(int match) {
    return match & 0xffff;
  }

  static int of(int length, int distance) {
    return length << LENGTH_SHIFT | distance;
  }
}
