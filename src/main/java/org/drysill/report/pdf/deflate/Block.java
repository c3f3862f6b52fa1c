package org.drysill.report.pdf.deflate;

import java.util.Arrays;

/** Steps with codes of their own. */
final class Block {
  private static final int LONGEST_WORD = 15;
  private static final int OWN_CODES = 2;

  private final Code literal;
  private final Code distance;
  private final CodeHead head;
  private final long bits;

  /** A block in which symbols occur so often, its end aside. */
  Block(Counts counts) {
    int[] literals = counts.literals().clone();
    literals[Symbols.END_OF_BLOCK] = 1;
    literal = Code.of(literals, LONGEST_WORD);
    distance = Code.of(twoAtLeast(counts.distances()), LONGEST_WORD);
    head = new CodeHead(literal, distance);
    bits =
        3
            + head.bits()
            + literal.bits(literals)
            + distance.bits(counts.distances())
            + extra(counts);
  }

  /** Some readers do not take a code of one word, though they should. */
  private static int[] twoAtLeast(int[] counts) {
    int[] two = counts.clone();
    long used = Arrays.stream(counts).filter(count -> count > 0).count();
    for (int i = 0; used < 2; i++) {
      if (two[i] == 0) {
        two[i] = 1;
        used++;
      }
    }
    return two;
  }

  private static long extra(Counts counts) {
    long bits = 0;
    for (int i = Symbols.END_OF_BLOCK + 1; i < Symbols.LITERALS_AND_LENGTHS; i++) {
      bits += (long) counts.literals()[i] * Symbols.extraOfLengthSymbol(i);
    }
    for (int i = 0; i < Symbols.DISTANCES; i++) {
      bits += (long) counts.distances()[i] * Symbols.distanceExtra(i);
    }
    return bits;
  }

  /** How many bits it takes, with its codes. */
  long bits() {
    return bits;
  }

  void write(Steps steps, boolean isLast, Bits out) {
    out.write(isLast ? 1 : 0, 1);
    out.write(OWN_CODES, 2);
    head.write(out);
    int[] literals = literal.words();
    int[] distances = distance.words();
    for (int i = 0; i < steps.size(); i++) {
      int step = steps.get(i);
      int length = Matches.length(step);
      if (length == 0) {
        out.write(literals[step], literal.length(step));
      } else {
        int symbol = Symbols.ofLength(length);
        out.write(literals[symbol], literal.length(symbol));
        out.write(Symbols.withinLength(length), Symbols.extraOfLengthSymbol(symbol));
        int away = Matches.distance(step);
        symbol = Symbols.ofDistance(away);
        out.write(distances[symbol], distance.length(symbol));
        out.write(Symbols.withinDistance(away), Symbols.distanceExtra(symbol));
      }
    }
    out.write(literals[Symbols.END_OF_BLOCK], literal.length(Symbols.END_OF_BLOCK));
  }
}
