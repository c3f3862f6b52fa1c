package org.drysill.report.pdf.deflate;

/** How often each symbol occurs in a stretch of steps. */
final class Counts {
  private final int[] literals = new int[Symbols.LITERALS_AND_LENGTHS];
  private final int[] distances = new int[Symbols.DISTANCES];

  /** Of bytes, of the end of a block and of lengths; for reading. */
  int[] literals() {
    return literals;
  }

  /** Of distances; for reading. */
  int[] distances() {
    return distances;
  }

  /** Counts a step, see {@link Steps}. */
  void add(int step) {
    int length = Matches.length(step);
    if (length == 0) {
      literals[step]++;
    } else {
      literals[Symbols.ofLength(length)]++;
      distances[Symbols.ofDistance(Matches.distance(step))]++;
    }
  }

  Counts plus(Counts other) {
    Counts sum = new Counts();
    for (int i = 0; i < literals.length; i++) {
      sum.literals[i] = literals[i] + other.literals[i];
    }
    for (int i = 0; i < distances.length; i++) {
      sum.distances[i] = distances[i] + other.distances[i];
    }
    return sum;
  }
}
