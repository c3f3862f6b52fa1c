package org.drysill.physics.zones;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * Triangular factors of an M-matrix most of whose entries are 0, such as that of rooms around a
 * hall: zones with the fewest ways are eliminated first, and only what is or becomes something is
 * touched. Without loops of doors nothing becomes something, and a solution takes as many steps as
 * there are doors.
 *
 * <p>Matrices and vectors are in the order in which zones are eliminated, {@link #order()}. As in
 * {@link Factors} no pivot is looked for.
 */
final class SparseFactors {
  private final int n;
  private final int[] order;
  private final int[][] after;
  private final int[] lowerRows;
  private final int[] lowerFrom;
  private final int[] lower;
  private final int[] upperFrom;
  private final int[] upper;
  private final double[] work;

  /** The factors of one matrix. */
  static final class Values {
    private final double[] lower;
    private final double[] upper;
    private final double[] inversePivot;

    private Values(int entries, int n) {
      lower = new double[entries];
      upper = new double[entries];
      inversePivot = new double[n];
    }
  }

  /**
   * For matrices that have entries where this one has.
   *
   * @param matrix n × n by rows, zones in the order of the home
   */
  SparseFactors(double[] matrix, int n) {
    this.n = n;
    this.order = new int[n];
    this.after = new int[n][];
    eliminate(neighbours(matrix));
    int entries = 0;
    int[][] before = new int[n][];
    for (int i = 0; i < n; i++) {
      before[i] = before(i);
      entries += before[i].length;
    }
    lowerFrom = new int[n + 1];
    upperFrom = new int[n + 1];
    lower = new int[entries];
    upper = new int[entries];
    for (int i = 0; i < n; i++) {
      lowerFrom[i + 1] = lowerFrom[i] + before[i].length;
      upperFrom[i + 1] = upperFrom[i] + after[i].length;
      System.arraycopy(before[i], 0, lower, lowerFrom[i], before[i].length);
      System.arraycopy(after[i], 0, upper, upperFrom[i], after[i].length);
    }
    lowerRows = IntStream.range(0, n).filter(i -> before[i].length > 0).toArray();
    work = new double[n * n];
  }

  /** Room for the factors of a matrix. */
  Values values() {
    return new Values(lower.length, n);
  }

  /** The zones in the order in which they are eliminated. */
  int[] order() {
    return order.clone();
  }

  /**
   * Factorises a matrix with something added to its diagonal.
   *
   * @param matrix n × n by rows, in the order of elimination
   * @param added n values
   * @param into filled
   */
  void factorise(double[] matrix, double[] added, Values into) {
    double[] inversePivot = into.inversePivot;
    System.arraycopy(matrix, 0, work, 0, work.length);
    for (int k = 0; k < n; k++) {
      inversePivot[k] = 1 / (work[k * n + k] + added[k]);
      for (int i : after[k]) {
        double factor = work[i * n + k] * inversePivot[k];
        work[i * n + k] = factor;
        for (int j : after[k]) {
          work[i * n + j] -= factor * work[k * n + j];
        }
      }
    }
    for (int i = 0; i < n; i++) {
      for (int e = lowerFrom[i]; e < lowerFrom[i + 1]; e++) {
        into.lower[e] = work[i * n + lower[e]];
      }
      for (int e = upperFrom[i]; e < upperFrom[i + 1]; e++) {
        into.upper[e] = work[i * n + upper[e]];
      }
    }
  }

  /** Replaces a right-hand side by the solution. */
  void solve(Values by, double[] x) {
    double[] lowerValue = by.lower;
    double[] upperValue = by.upper;
    double[] inversePivot = by.inversePivot;
    for (int r = 0; r < lowerRows.length; r++) {
      int i = lowerRows[r];
      double sum = x[i];
      for (int e = lowerFrom[i]; e < lowerFrom[i + 1]; e++) {
        sum -= lowerValue[e] * x[lower[e]];
      }
      x[i] = sum;
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = x[i];
      for (int e = upperFrom[i]; e < upperFrom[i + 1]; e++) {
        sum -= upperValue[e] * x[upper[e]];
      }
      x[i] = sum * inversePivot[i];
    }
  }

  private BitSet[] neighbours(double[] matrix) {
    BitSet[] neighbours = new BitSet[n];
    for (int i = 0; i < n; i++) {
      neighbours[i] = new BitSet(n);
      for (int j = 0; j < n; j++) {
        neighbours[i].set(j, i != j && (matrix[i * n + j] != 0 || matrix[j * n + i] != 0));
      }
    }
    return neighbours;
  }

  /** Each time the zone that is joined to the fewest; those that it joined are joined then. */
  private void eliminate(BitSet[] neighbours) {
    int[] place = new int[n];
    BitSet left = new BitSet(n);
    left.set(0, n);
    BitSet[] then = new BitSet[n];
    for (int k = 0; k < n; k++) {
      int zone = left.nextSetBit(0);
      for (int z = zone; z >= 0; z = left.nextSetBit(z + 1)) {
        zone = neighbours[z].cardinality() < neighbours[zone].cardinality() ? z : zone;
      }
      order[k] = zone;
      place[zone] = k;
      left.clear(zone);
      then[k] = neighbours[zone];
      for (int z = then[k].nextSetBit(0); z >= 0; z = then[k].nextSetBit(z + 1)) {
        neighbours[z].or(then[k]);
        neighbours[z].clear(z);
        neighbours[z].clear(zone);
      }
    }
    for (int k = 0; k < n; k++) {
      after[k] = then[k].stream().map(z -> place[z]).sorted().toArray();
    }
  }

  private int[] before(int zone) {
    return IntStream.range(0, zone)
        .filter(k -> Arrays.stream(after[k]).anyMatch(i -> i == zone))
        .toArray();
  }
}
