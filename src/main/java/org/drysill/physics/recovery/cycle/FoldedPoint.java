package org.drysill.physics.recovery.cycle;

/**
 * The mean of all cycles at one moment of the cycle, as the thermometer showed it.
 *
 * @param offsetS time [s] within the cycle
 * @param ratio (T − Tfar) / (Tnear − Tfar) [1]
 */
public record FoldedPoint(double offsetS, double ratio) {}
