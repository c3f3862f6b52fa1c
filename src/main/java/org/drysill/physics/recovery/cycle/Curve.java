package org.drysill.physics.recovery.cycle;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All cycles laid on each other, in narrow bins of the time before (negative) or after the turn:
 * from a quarter of a cycle before to three quarters after it.
 */
final class Curve {
  /** As many bins as a cycle deserves. */
  private static final int MOST_BINS = 200;

  private static final double BEFORE = 0.25;

  private final double[] offsets;
  private final double[] ratios;
  private final double[] air;
  private final double[] counts;
  private final double binS;

  private Curve(double[] offsets, double[] ratios, double[] air, double[] counts, double binS) {
    this.offsets = offsets;
    this.ratios = ratios;
    this.air = air;
    this.counts = counts;
    this.binS = binS;
  }

  static Curve of(FaceLog log, Windows windows, List<Cycle> cycles, double cycleS, double stepS) {
    double binS = Math.max(stepS / 2, cycleS / MOST_BINS);
    int bins = (int) Math.ceil(cycleS / binS) + 1;
    double[] sumOffsets = new double[bins];
    double[] sumRatios = new double[bins];
    double[] sumAir = new double[bins];
    double[] counts = new double[bins];
    for (Cycle cycle : cycles) {
      int from = windows.first(cycle.from());
      int to = windows.first(cycle.to());
      double near = 0;
      double far = 0;
      for (int i = from; i < to; i++) {
        near += log.near(i) / (to - from);
        far += log.far(i) / (to - from);
      }
      for (int i = from; i < to; i++) {
        double offset = log.seconds(i) - cycle.from();
        offset -= offset > (1 - BEFORE) * cycle.length() ? cycle.length() : 0;
        int bin = (int) ((offset + BEFORE * cycleS) / binS);
        if (bin >= 0 && bin < bins) {
          sumOffsets[bin] += offset;
          sumRatios[bin] += (log.face(i) - far) / (near - far);
          sumAir[bin] += log.air(i);
          counts[bin]++;
        }
      }
    }
    return filled(sumOffsets, sumRatios, sumAir, counts, binS);
  }

  private static Curve filled(
      double[] offsets, double[] ratios, double[] air, double[] counts, double binS) {
    int size = 0;
    for (int bin = 0; bin < counts.length; bin++) {
      if (counts[bin] > 0) {
        offsets[size] = offsets[bin] / counts[bin];
        ratios[size] = ratios[bin] / counts[bin];
        air[size] = air[bin] / counts[bin];
        counts[size] = counts[bin];
        size++;
      }
    }
    return new Curve(
        Arrays.copyOf(offsets, size),
        Arrays.copyOf(ratios, size),
        Arrays.copyOf(air, size),
        Arrays.copyOf(counts, size),
        binS);
  }

  int size() {
    return offsets.length;
  }

  /** Time before or after the turn [s]. */
  double offset(int i) {
    return offsets[i];
  }

  /** Mean ratio of a bin. */
  double ratio(int i) {
    return ratios[i];
  }

  /** Mean flow of a bin. */
  double air(int i) {
    return air[i];
  }

  /** Readings in a bin. */
  double count(int i) {
    return counts[i];
  }

  /** Width of a bin [s]. */
  double binS() {
    return binS;
  }

  /** Mean of a bin and its neighbours. */
  double smooth(int i) {
    int from = Math.max(0, i - 1);
    int to = Math.min(size() - 1, i + 1);
    double sum = 0;
    double weight = 0;
    for (int k = from; k <= to; k++) {
      sum += counts[k] * ratios[k];
      weight += counts[k];
    }
    return sum / weight;
  }

  /** The highest of all bins, each with its neighbours. */
  double highest() {
    return IntStream.range(0, size()).mapToDouble(this::smooth).max().orElseThrow();
  }

  /** The lowest of all bins, each with its neighbours. */
  double lowest() {
    return IntStream.range(0, size()).mapToDouble(this::smooth).min().orElseThrow();
  }
}
