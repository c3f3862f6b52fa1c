package org.drysill.assess.readings;

import java.util.List;
import org.drysill.physics.Range;

/**
 * Several readings of one thing as one: the mean weighted by the inverse variances of the readings
 * (JCGM 100:2008, GUM).
 *
 * <pre>x = Σ x_j/u_j² / Σ 1/u_j²      u² = min(u_j)² + Σ (x_j - x)²/u_j² / Σ 1/u_j²</pre>
 *
 * <p>The instruments' errors are mostly offsets that readings taken with one instrument share, so
 * their number does not make u smaller; their scatter makes it larger.
 */
public final class WeightedMean {
  /** A ratio is never known better than this [1]; keeps weights finite for exact readings. */
  private static final double FINEST = 0.001;

  private WeightedMean() {}

  /** The mean of ratios with its error; at least one. */
  public static Range of(List<Range> ratios) {
    double weights = ratios.stream().mapToDouble(WeightedMean::weight).sum();
    double mean = ratios.stream().mapToDouble(r -> weight(r) * r.likely()).sum() / weights;
    double scatter =
        ratios.stream().mapToDouble(r -> weight(r) * Math.pow(r.likely() - mean, 2)).sum()
            / weights;
    double finest = ratios.stream().mapToDouble(WeightedMean::error).min().orElseThrow();
    return Range.around(mean, Math.sqrt(finest * finest + scatter));
  }

  private static double error(Range ratio) {
    return Math.max(FINEST, Math.max(ratio.high() - ratio.likely(), ratio.likely() - ratio.low()));
  }

  private static double weight(Range ratio) {
    return 1 / (error(ratio) * error(ratio));
  }
}
