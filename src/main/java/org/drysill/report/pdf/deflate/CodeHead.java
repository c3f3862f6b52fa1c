package org.drysill.report.pdf.deflate;

import java.util.Arrays;

/**
 * The codes of a block as they stand at its beginning (RFC 1951, 3.2.7): lengths, repeated ones
 * once.
 */
final class CodeHead {
  private static final int[] ORDER = {
    16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15
  };
  private static final int SYMBOLS = 19;
  private static final int LONGEST_WORD = 7;
  private static final int FEWEST_LITERALS = 257;
  private static final int FEWEST_LENGTHS = 4;
  private static final int REPEAT = 16;
  private static final int FEW_ZEROS = 17;
  private static final int MANY_ZEROS = 18;

  private final int literals;
  private final int distances;

  /** Symbols, each with what is told in extra bits, shifted. */
  private final int[] told;

  private final Code code;
  private final int[] counts = new int[SYMBOLS];

  CodeHead(Code literal, Code distance) {
    int[] first = literal.lengths();
    int[] second = distance.lengths();
    literals = used(first, FEWEST_LITERALS);
    distances = used(second, 1);
    int[] lengths = Arrays.copyOf(first, literals + distances);
    System.arraycopy(second, 0, lengths, literals, distances);
    told = told(lengths);
    for (int symbol : told) {
      counts[symbol & 0xff]++;
    }
    code = Code.of(counts, LONGEST_WORD);
  }

  private static int used(int[] lengths, int least) {
    int used = lengths.length;
    while (used > least && lengths[used - 1] == 0) {
      used--;
    }
    return used;
  }

  private static int[] told(int[] lengths) {
    int[] told = new int[lengths.length];
    int size = 0;
    int at = 0;
    while (at < lengths.length) {
      int length = lengths[at];
      int run = 1;
      while (at + run < lengths.length && lengths[at + run] == length) {
        run++;
      }
      int taken = 1;
      if (length == 0 && run >= 3) {
        taken = Math.min(run, 138);
        told[size++] = taken > 10 ? MANY_ZEROS | (taken - 11) << 8 : FEW_ZEROS | (taken - 3) << 8;
      } else if (at > 0 && length == lengths[at - 1] && run >= 3) {
        taken = Math.min(run, 6);
        told[size++] = REPEAT | (taken - 3) << 8;
      } else {
        told[size++] = length;
      }
      at += taken;
    }
    return Arrays.copyOf(told, size);
  }

  private int lengths() {
    int last = SYMBOLS;
    while (last > FEWEST_LENGTHS && code.length(ORDER[last - 1]) == 0) {
      last--;
    }
    return last;
  }

  private static int extra(int symbol) {
    return switch (symbol) {
      case REPEAT -> 2;
      case FEW_ZEROS -> 3;
      case MANY_ZEROS -> 7;
      default -> 0;
    };
  }

  long bits() {
    long extra = 2L * counts[REPEAT] + 3L * counts[FEW_ZEROS] + 7L * counts[MANY_ZEROS];
    return 5 + 5 + 4 + 3L * lengths() + code.bits(counts) + extra;
  }

  void write(Bits out) {
    out.write(literals - FEWEST_LITERALS, 5);
    out.write(distances - 1, 5);
    int last = lengths();
    out.write(last - FEWEST_LENGTHS, 4);
    for (int i = 0; i < last; i++) {
      out.write(code.length(ORDER[i]), 3);
    }
    int[] words = code.words();
    for (int symbol : told) {
      int which = symbol & 0xff;
      out.write(words[which], code.length(which));
      out.write(symbol >> 8, extra(which));
    }
  }
}
