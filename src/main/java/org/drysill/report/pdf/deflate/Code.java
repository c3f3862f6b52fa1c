package org.drysill.report.pdf.deflate;

import java.util.Arrays;

/** A prefix code for an alphabet, told by the lengths of its words alone (RFC 1951, 3.2.2). */
final class Code {
  private final int[] lengths;

  private Code(int[] lengths) {
    this.lengths = lengths;
  }

  /**
   * The shortest code for symbols that occur so often.
   *
   * @param counts how often each symbol occurs
   * @param longest the most bits that a word may have
   */
  static Code of(int[] counts, int longest) {
    int[] weights = counts.clone();
    int[] lengths = CodeLengths.shortest(weights);
    while (Arrays.stream(lengths).max().orElse(0) > longest) {
      // Seldom: what differs less needs words that differ less in length.
      for (int i = 0; i < weights.length; i++) {
        weights[i] = (weights[i] + 1) / 2;
      }
      lengths = CodeLengths.shortest(weights);
    }
    return new Code(lengths);
  }

  int[] lengths() {
    return lengths.clone();
  }

  int length(int symbol) {
    return lengths[symbol];
  }

  /** How many bits symbols take that occur so often. */
  long bits(int[] counts) {
    long bits = 0;
    for (int i = 0; i < counts.length; i++) {
      bits += (long) counts[i] * lengths[i];
    }
    return bits;
  }

  /** The words, with their first bit lowest as they are written. */
  int[] words() {
    int[] words = new int[lengths.length];
    int next = 0;
    int longest = Arrays.stream(lengths).max().orElse(0);
    for (int length = 1; length <= longest; length++) {
      next <<= 1;
      for (int i = 0; i < lengths.length; i++) {
        if (lengths[i] == length) {
          words[i] = Integer.reverse(next++) >>> (Integer.SIZE - length);
        }
      }
    }
    return words;
  }
}
