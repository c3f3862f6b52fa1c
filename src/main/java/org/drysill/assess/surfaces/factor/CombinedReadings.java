package org.drysill.assess.surfaces.factor;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.physics.Range;

/**
 * Several readings of one place as one factor: the mean weighted by the inverse variances of the
 * readings (JCGM 100:2008, GUM).
 *
 * <pre>f = Σ f_j/u_j² / Σ 1/u_j²      u² = min(u_j)² + Σ (f_j - f)²/u_j² / Σ 1/u_j²</pre>
 *
 * <p>The instruments' errors are mostly offsets that readings taken with one instrument share, so
 * their number does not make u smaller; their scatter makes it larger. Of several points that were
 * read on a place the coldest counts.
 *
 * @param factor the combined factor
 * @param weak true where every reading behind it is weak
 * @param point the point that was the coldest
 * @param used the readings behind it
 */
record CombinedReadings(
    Range factor, boolean weak, Optional<String> point, List<ReadingFactor> used) {
  /** A factor is never known better than this [1]; keeps weights finite for exact readings. */
  private static final double FINEST = 0.001;

  CombinedReadings {
    used = List.copyOf(used);
  }

  /** The coldest point of all usable readings; empty where none is usable. */
  static Optional<CombinedReadings> coldest(List<ReadingFactor> readings) {
    Map<Optional<String>, List<ReadingFactor>> points = new LinkedHashMap<>();
    for (ReadingFactor reading : readings) {
      if (reading.factor().isPresent()) {
        points.merge(reading.point(), List.of(reading), CombinedReadings::joined);
      }
    }
    return points.entrySet().stream()
        .map(e -> of(e.getKey(), e.getValue()))
        .min(Comparator.comparingDouble(c -> c.factor().likely()));
  }

  private static CombinedReadings of(Optional<String> point, List<ReadingFactor> used) {
    double weights = 0;
    double sum = 0;
    double finest = Double.POSITIVE_INFINITY;
    for (ReadingFactor reading : used) {
      weights += weight(reading);
      sum += weight(reading) * likely(reading);
      finest = Math.min(finest, error(reading));
    }
    double mean = sum / weights;
    double scatter = 0;
    for (ReadingFactor reading : used) {
      scatter += weight(reading) * Math.pow(likely(reading) - mean, 2) / weights;
    }
    double error = Math.sqrt(finest * finest + scatter);
    Range factor = new Range(Math.max(0, mean - error), mean, Math.min(1, mean + error));
    boolean weak = used.stream().allMatch(r -> r.quality() == ReadingQuality.WEAK);
    return new CombinedReadings(factor, weak, point, used);
  }

  private static double likely(ReadingFactor reading) {
    return reading.factor().orElseThrow().likely();
  }

  private static double error(ReadingFactor reading) {
    Range factor = reading.factor().orElseThrow();
    double wider = Math.max(factor.high() - factor.likely(), factor.likely() - factor.low());
    return Math.max(FINEST, wider);
  }

  private static double weight(ReadingFactor reading) {
    return 1 / (error(reading) * error(reading));
  }

  private static List<ReadingFactor> joined(List<ReadingFactor> a, List<ReadingFactor> b) {
    return Stream.concat(a.stream(), b.stream()).toList();
  }
}
