package org.drysill.report.pdf.deflate;

/** What a byte, a length and a distance cost, in parts of a bit. */
final class Prices {
  /**
   * A stretch of a quarter of a million bytes, eight bits each, stays far below what an int takes.
   */
  private static final int PARTS = 256;

  /** What never occurred may yet; it costs as if it had been seen less than once. */
  private static final double UNSEEN = 0.4;

  private final int[] literal = new int[Symbols.END_OF_BLOCK];
  private final int[] length = new int[Symbols.LONGEST_MATCH + 1];
  private final int[] distance = new int[Symbols.DISTANCES];

  /** Before anything is known: bytes of text and numbers take some six bits, a match seventeen. */
  static Prices first() {
    Prices prices = new Prices();
    for (int i = 0; i < prices.literal.length; i++) {
      prices.literal[i] = 6 * PARTS;
    }
    for (int i = Symbols.SHORTEST_MATCH; i <= Symbols.LONGEST_MATCH; i++) {
      prices.length[i] = (5 + Symbols.extraOfLengthSymbol(Symbols.ofLength(i))) * PARTS;
    }
    for (int i = 0; i < Symbols.DISTANCES; i++) {
      prices.distance[i] = (4 + Symbols.distanceExtra(i)) * PARTS;
    }
    return prices;
  }

  /** By how often each symbol occurred: the more, the fewer bits. */
  static Prices of(Counts counts) {
    int[] bits = bits(counts.literals());
    Prices prices = new Prices();
    System.arraycopy(bits, 0, prices.literal, 0, prices.literal.length);
    for (int i = Symbols.SHORTEST_MATCH; i <= Symbols.LONGEST_MATCH; i++) {
      int symbol = Symbols.ofLength(i);
      prices.length[i] = bits[symbol] + Symbols.extraOfLengthSymbol(symbol) * PARTS;
    }
    bits = bits(counts.distances());
    for (int i = 0; i < Symbols.DISTANCES; i++) {
      prices.distance[i] = bits[i] + Symbols.distanceExtra(i) * PARTS;
    }
    return prices;
  }

  /** By byte; for reading. */
  int[] literal() {
    return literal;
  }

  /** By length, with what tells it within its class; for reading. */
  int[] length() {
    return length;
  }

  /** By symbol of the distance, with what tells it within its class; for reading. */
  int[] distance() {
    return distance;
  }

  private static int[] bits(int[] counts) {
    double sum = 0;
    for (int count : counts) {
      sum += count;
    }
    int[] bits = new int[counts.length];
    for (int i = 0; i < counts.length; i++) {
      double share = Math.max(counts[i], UNSEEN) / Math.max(sum, 1);
      bits[i] = (int) Math.max(1, Math.round(-PARTS * StrictMath.log(share) / StrictMath.log(2)));
    }
    return bits;
  }
}
