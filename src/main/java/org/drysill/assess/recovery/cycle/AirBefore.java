package org.drysill.assess.recovery.cycle;

import org.drysill.physics.Range;

/** The air before one face of a unit while the other end was logged. */
final class AirBefore {
  private final double[] celsius;
  private final Range mean;
  private final boolean logged;

  /**
   * The air of a log.
   *
   * @param celsius for each reading of the log [°C]
   * @param mean over the log, with the error of the thermometer [°C]
   * @param logged whether the log has it; where not, a reading stands in
   */
  AirBefore(double[] celsius, Range mean, boolean logged) {
    this.celsius = celsius.clone();
    this.mean = mean;
    this.logged = logged;
  }

  double[] celsius() {
    return celsius.clone();
  }

  Range mean() {
    return mean;
  }

  boolean isLogged() {
    return logged;
  }

  /** Error of the thermometer [K]. */
  double error() {
    return (mean.high() - mean.low()) / 2;
  }
}
