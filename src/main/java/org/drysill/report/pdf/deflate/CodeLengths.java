package org.drysill.report.pdf.deflate;

import java.util.Arrays;

/**
 * The lengths of the words of the shortest prefix code: the two rarest are joined, again and again.
 */
final class CodeLengths {
  private CodeLengths() {}

  /**
   * The lengths by symbol, zero for what does not occur.
   *
   * @param weights how often each symbol occurs
   */
  static int[] shortest(int[] weights) {
    int[] leaves = rarestFirst(weights);
    int[] lengths = new int[weights.length];
    if (leaves.length < 2) {
      // A word of no bits could not be told.
      Arrays.stream(leaves).forEach(leaf -> lengths[leaf] = 1);
      return lengths;
    }
    int[] parents = parents(Arrays.stream(leaves).map(leaf -> weights[leaf]).toArray());
    int[] depths = new int[parents.length];
    for (int node = parents.length - 2; node >= 0; node--) {
      depths[node] = depths[parents[node]] + 1;
    }
    for (int i = 0; i < leaves.length; i++) {
      lengths[leaves[i]] = depths[i];
    }
    return lengths;
  }

  /** The symbols that occur, sorted by weight and, where it is the same, by symbol. */
  private static int[] rarestFirst(int[] weights) {
    long[] sorted = new long[weights.length];
    int size = 0;
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        sorted[size++] = (long) weights[i] << Integer.SIZE | i;
      }
    }
    Arrays.sort(sorted, 0, size);
    int[] symbols = new int[size];
    for (int i = 0; i < size; i++) {
      symbols[i] = (int) sorted[i];
    }
    return symbols;
  }

  /** The node above each node: first the leaves, then what joins two, in the order of weight. */
  private static int[] parents(int[] sorted) {
    int leaves = sorted.length;
    int[] weight = Arrays.copyOf(sorted, 2 * leaves - 1);
    int[] parents = new int[weight.length];
    int leaf = 0;
    int joined = leaves;
    for (int node = leaves; node < weight.length; node++) {
      for (int half = 0; half < 2; half++) {
        boolean isLeaf = leaf < leaves && (joined == node || weight[leaf] <= weight[joined]);
        int rarest = isLeaf ? leaf++ : joined++;
        weight[node] += weight[rarest];
        parents[rarest] = node;
      }
    }
    return parents;
  }
}
