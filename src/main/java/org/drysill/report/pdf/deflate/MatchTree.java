package org.drysill.report.pdf.deflate;

import java.util.Arrays;

/**
 * Finds where bytes stood before. All places that begin with the same three bytes form a binary
 * tree sorted by what follows there, the latest on top, so that the way down from the top comes by
 * the nearest place for each length.
 */
final class MatchTree {
  private static final int MASK = Symbols.WINDOW - 1;
  private static final int HASH_BITS = 15;

  /** Spreads three bytes over the table; an odd number near the golden section of 32 bits. */
  private static final int SPREAD = 0x9E3779B1;

  private static final int NONE = -1;

  /** How many places are looked at on the way down. */
  private static final int DEPTH = 48;

  private final byte[] content;
  private final int[] top = new int[1 << HASH_BITS];

  /** For each place in the window the next below that sorts before it, then the one after. */
  private final int[] below = new int[2 * Symbols.WINDOW];

  MatchTree(byte[] content) {
    this.content = content;
    Arrays.fill(top, NONE);
  }

  /**
   * Puts a place into its tree; places must come in their order.
   *
   * @param at the place
   * @param found takes what was found, the shortest and nearest first
   * @return the longest length found, below the shortest match if none
   */
  int find(int at, Matches found) {
    int most = Math.min(Symbols.LONGEST_MATCH, content.length - at);
    int longest = Symbols.SHORTEST_MATCH - 1;
    if (most <= longest) {
      return longest;
    }
    int hash = hash(at);
    int other = top[hash];
    top[hash] = at;
    int before = 2 * (at & MASK);
    int after = before + 1;
    int sameBefore = 0;
    int sameAfter = 0;
    int steps = DEPTH;
    while (other > at - Symbols.WINDOW && other >= 0 && steps-- > 0) {
      int same = Math.min(sameBefore, sameAfter);
      while (same < most && content[other + same] == content[at + same]) {
        same++;
      }
      if (same > longest) {
        longest = same;
        found.add(same, at - other);
      }
      int lower = 2 * (other & MASK);
      if (same == most) {
        below[before] = below[lower];
        below[after] = below[lower + 1];
        return longest;
      }
      if ((content[other + same] & 0xff) < (content[at + same] & 0xff)) {
        below[before] = other;
        before = lower + 1;
        other = below[before];
        sameBefore = same;
      } else {
        below[after] = other;
        after = lower;
        other = below[after];
        sameAfter = same;
      }
    }
    below[before] = NONE;
    below[after] = NONE;
    return longest;
  }

  private int hash(int at) {
    int three =
        (content[at] & 0xff) | (content[at + 1] & 0xff) << 8 | (content[at + 2] & 0xff) << 16;
    return (three * SPREAD) >>> (Integer.SIZE - HASH_BITS);
  }
}
