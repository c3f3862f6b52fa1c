package org.drysill.physics.recovery.cycle;

/**
 * Where in the cycle the air turns, relative to the mark of {@link Cycle}.
 *
 * @param otherFrom the other air begins [s], at or before the mark
 * @param judgedFrom the judged air begins [s]
 * @param pauseS how long it stands still before either [s]; 0 where that does not show
 * @param lagS time constant of the thermometer [s]
 * @param equalHalves whether both halves are taken as alike
 */
record TurnPlaces(
    double otherFrom, double judgedFrom, double pauseS, double lagS, boolean equalHalves) {
  CycleTiming timing(double cycleS) {
    return new CycleTiming(cycleS, cycleS + otherFrom - judgedFrom, pauseS, lagS, equalHalves);
  }
}
