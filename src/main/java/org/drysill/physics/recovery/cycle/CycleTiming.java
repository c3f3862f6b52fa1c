package org.drysill.physics.recovery.cycle;

/**
 * How a unit turns, and how slow the thermometer at its face is.
 *
 * @param cycleS from one turn into the judged half to the next [s]
 * @param judgedS length of the judged half, its pause included [s]
 * @param pauseS how long it stands still at a turn [s]; 0 where the log does not show it
 * @param lagS time constant of the thermometer [s]
 * @param equalHalves whether both halves were found to be alike
 */
public record CycleTiming(
    double cycleS, double judgedS, double pauseS, double lagS, boolean equalHalves) {
  /** Length of the other half, its pause included [s]. */
  public double otherS() {
    return cycleS - judgedS;
  }

  /** Time in which judged air flows [s]. */
  public double blowingS() {
    return judgedS - pauseS;
  }
}
