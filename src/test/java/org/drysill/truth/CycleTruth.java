package org.drysill.truth;

import static org.drysill.truth.RoomTruth.between;

import java.util.Random;

/**
 * What is true of a made-up alternating unit and of the thermometers at it, drawn from a seed.
 *
 * @param seed of everything else that happens
 * @param ntu transfer units of its store
 * @param storeS heat capacity of the store by that of the air stream [s]
 * @param halfS half-cycle, its pause included [s]
 * @param pauseS how long it stands still at each turn [s]
 * @param lagS time constant of the thermometers at its faces [s]
 * @param noiseK scatter of each reading [K]
 * @param accuracyK each thermometer is off by up to this, for all the time [K]
 * @param stepS from one reading to the next [s]
 * @param minutes length of the log [min]
 * @param indoor temperature of the room at the start [°C]
 * @param outdoor temperature outdoors at the start [°C]
 */
public record CycleTruth(
    long seed,
    double ntu,
    double storeS,
    double halfS,
    double pauseS,
    double lagS,
    double noiseK,
    double accuracyK,
    double stepS,
    double minutes,
    double indoor,
    double outdoor) {
  private static final double[] STEPS = {1, 1, 2, 3, 5};

  /** The unit of a seed. */
  public static CycleTruth of(long seed) {
    Random dice = RoomTruth.dice(seed, 21);
    double half = between(dice, 45, 90);
    return new CycleTruth(
        seed,
        between(dice, 1.5, 8),
        half * between(dice, 0.8, 3),
        half,
        dice.nextBoolean() ? 0 : between(dice, 1, 6),
        between(dice, 1, 12),
        between(dice, 0.02, 0.15),
        between(dice, 0.2, 0.5),
        STEPS[dice.nextInt(STEPS.length)],
        between(dice, 40, 120),
        between(dice, 18, 22),
        between(dice, -2, 8));
  }

  /** The same with thermometers of another time constant at the faces [s]. */
  public CycleTruth withLag(double seconds) {
    return new CycleTruth(
        seed, ntu, storeS, halfS, pauseS, seconds, noiseK, accuracyK, stepS, minutes, indoor,
        outdoor);
  }

  /** The same logged at another step [s] for another time [min]. */
  public CycleTruth logged(double everyS, double forMinutes) {
    return new CycleTruth(
        seed,
        ntu,
        storeS,
        halfS,
        pauseS,
        lagS,
        noiseK,
        accuracyK,
        everyS,
        forMinutes,
        indoor,
        outdoor);
  }

  /** The same on a day of another temperature [°C]. */
  public CycleTruth on(double outdoors) {
    return new CycleTruth(
        seed, ntu, storeS, halfS, pauseS, lagS, noiseK, accuracyK, stepS, minutes, indoor,
        outdoors);
  }
}
