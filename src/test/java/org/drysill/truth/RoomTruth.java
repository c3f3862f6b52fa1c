package org.drysill.truth;

import java.util.Random;

/**
 * What is true of a made-up room, drawn from a seed.
 *
 * @param seed of everything else that happens in it
 * @param volumeM3 air of the room [m³]
 * @param airChangePerHour n, its mean [1/h], 0.2 to 3, evenly on a logarithmic scale
 * @param dailySpread standard deviation of ln n from day to day: wind
 * @param persons who sleep there
 * @param personM3S CO₂ that each gives off [m³/s]
 * @param capacitance M, moisture store of air and fabric together over that of the air [1]
 * @param uptakePerHour exchange of vapour between air and fabric, in air changes [1/h]
 */
public record RoomTruth(
    long seed,
    double volumeM3,
    double airChangePerHour,
    double dailySpread,
    int persons,
    double personM3S,
    double capacitance,
    double uptakePerHour) {

  /** The room of a seed. */
  public static RoomTruth of(long seed) {
    Random dice = dice(seed, 1);
    return new RoomTruth(
        seed,
        between(dice, 25, 70),
        0.2 * Math.pow(15, dice.nextDouble()),
        between(dice, 0, 0.15),
        1 + dice.nextInt(3),
        between(dice, 3.2e-6, 5e-6),
        between(dice, 3, 20),
        between(dice, 2, 8));
  }

  /** Dice of a seed for one purpose; the first throws of neighbouring seeds would be alike. */
  static Random dice(long seed, long purpose) {
    return new Random((8 * seed + purpose) * 0x9E3779B97F4A7C15L);
  }

  static double between(Random dice, double low, double high) {
    return low + (high - low) * dice.nextDouble();
  }
}
