package org.drysill.yaml.units;

/**
 * One unit: {@code kept = (written - shift) * times / over}. Multiplier and divisor are apart so
 * that a division by 1000 is rounded once.
 *
 * @param name the spelling shown to people
 * @param shift the reading at which the kept unit shows 0, for temperature scales; 0 otherwise
 * @param times multiplier
 * @param over divisor
 */
record Symbol(String name, double shift, double times, double over) {
  static Symbol identity(String name) {
    return new Symbol(name, 0, 1, 1);
  }

  /** A value of this unit in the kept unit. */
  double kept(double written) {
    return (written - shift) * times / over;
  }

  /** A difference in this unit as a difference in the kept unit. */
  double keptDifference(double written) {
    return written * times / over;
  }

  /** A value of the kept unit in this unit. */
  double written(double kept) {
    return kept * over / times + shift;
  }
}
