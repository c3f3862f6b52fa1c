package org.drysill.physics.mould;

/**
 * How readily mould grows on a surface, with the coefficients of Ojanen et al. 2010 as taken up in
 * ANSI/ASHRAE Standard 160-2016 (memory, not read again in either).
 *
 * <p>k1 is the growth factor below and from index 1; A, B, C make the highest index that can be
 * reached; RHmin the least humidity that lets it grow; W the factor of the timber.
 */
public enum MouldSensitivity {
  /** Untreated sapwood of pine. */
  VERY_SENSITIVE(1, 2, 1, 7, 2, 80, 0),
  /** Planed spruce, paper-faced board, wallpaper. */
  SENSITIVE(0.578, 0.386, 0.3, 6, 1, 80, 1),
  /** Concrete, aerated concrete, mineral wool, mineral render. */
  MEDIUM_RESISTANT(0.072, 0.097, 0, 5, 1.5, 85, 1),
  /** Glass, metal, ceramic. */
  RESISTANT(0.033, 0.014, 0, 3, 1, 85, 1);

  private final double growthBelowOne;
  private final double growthFromOne;
  private final double a;
  private final double b;
  private final double c;
  private final double leastHumidity;
  private final double timber;

  MouldSensitivity(
      double growthBelowOne,
      double growthFromOne,
      double a,
      double b,
      double c,
      double leastHumidity,
      double timber) {
    this.growthBelowOne = growthBelowOne;
    this.growthFromOne = growthFromOne;
    this.a = a;
    this.b = b;
    this.c = c;
    this.leastHumidity = leastHumidity;
    this.timber = timber;
  }

  double growthFactor(double index) {
    return index < 1 ? growthBelowOne : growthFromOne;
  }

  double highestIndex(double share) {
    return Math.max(0, a + b * share - c * share * share);
  }

  double leastHumidity() {
    return leastHumidity;
  }

  double timber() {
    return timber;
  }
}
