package org.drysill.truth;

import static org.drysill.truth.RoomTruth.between;

import java.util.Random;

/**
 * What happens in a made-up room minute by minute: who is there, what gives off vapour, how the
 * wind turns n, how the outdoors drift.
 */
final class RoomLife {
  static final int DAY = 24 * 60;

  final int minutes;
  final double[] airChangePerHour;
  final double[] persons;
  final double[] vapourGH;
  final double[] outdoorPpm;
  final double[] outdoorGM3;
  final double[] indoorCelsius;
  final double[] outdoorCelsius;

  private final RoomTruth truth;
  private final Random dice;

  RoomLife(RoomTruth truth, int days) {
    this.truth = truth;
    this.dice = RoomTruth.dice(truth.seed(), 2);
    this.minutes = days * DAY;
    this.airChangePerHour = new double[minutes];
    this.persons = new double[minutes];
    this.vapourGH = new double[minutes];
    this.outdoorPpm = new double[minutes];
    this.outdoorGM3 = new double[minutes];
    this.indoorCelsius = new double[minutes];
    this.outdoorCelsius = new double[minutes];
    wind(days);
    people(days);
    water(days);
    outdoors();
  }

  /** Each day has its n; the mean over the days is the true one. */
  private void wind(int days) {
    double[] factor = new double[days];
    double sum = 0;
    for (int day = 0; day < days; day++) {
      factor[day] = Math.exp(truth.dailySpread() * dice.nextGaussian());
      sum += factor[day];
    }
    for (int i = 0; i < minutes; i++) {
      airChangePerHour[i] = truth.airChangePerHour() * factor[i / DAY] * days / sum;
    }
  }

  /** Away on most days; leave one after the other; now and then somebody comes back for a while. */
  private void people(int days) {
    for (int person = 0; person < truth.persons(); person++) {
      fill(persons, 0, minutes, 1);
    }
    for (int day = 0; day < days; day++) {
      int leaves = day * DAY + (int) (60 * between(dice, 7, 9));
      int returns = day * DAY + (int) (60 * between(dice, 15, 19));
      boolean home = dice.nextDouble() < 0.2;
      for (int person = 0; person < truth.persons() && !home; person++) {
        fill(persons, leaves + dice.nextInt(12), returns + dice.nextInt(60), -1);
      }
      if (!home && dice.nextDouble() < 0.2) {
        int back = leaves + 60 + dice.nextInt(240);
        fill(persons, back, back + 10 + dice.nextInt(40), 1);
      }
    }
  }

  private void water(int days) {
    for (int i = 0; i < minutes; i++) {
      vapourGH[i] = 15 + 45 * persons[i];
    }
    for (int day = 0; day < days; day++) {
      int shower = day * DAY + (int) (60 * between(dice, 6, 7));
      fill(vapourGH, shower, shower + 8 + dice.nextInt(8), between(dice, 1200, 2400));
      int meal = day * DAY + (int) (60 * between(dice, 18, 20));
      fill(vapourGH, meal, meal + 20 + dice.nextInt(40), between(dice, 300, 800));
      if (dice.nextDouble() < 0.3) {
        int washing = day * DAY + (int) (60 * between(dice, 9, 12));
        fill(vapourGH, washing, washing + 480, between(dice, 100, 200));
      }
    }
  }

  private void outdoors() {
    double mean = between(dice, 400, 450);
    double swing = between(dice, 2, 15);
    double weather = 0;
    for (int i = 0; i < minutes; i++) {
      weather = weather * (1 - 1.0 / 1800) + dice.nextGaussian() * Math.sqrt(2.0 / 1800);
      double clock = Math.cos(2 * Math.PI * (i - 15 * 60) / DAY);
      outdoorPpm[i] = mean - swing * clock + 4 * weather;
      outdoorGM3[i] = 5.5 + 0.3 * clock + 0.8 * weather;
      outdoorCelsius[i] = 6 + 3 * clock + 2 * weather;
      indoorCelsius[i] = 19.5 + 0.8 * Math.cos(2 * Math.PI * (i - 20 * 60) / DAY);
    }
  }

  private void fill(double[] rates, int from, int to, double amount) {
    for (int i = Math.max(0, from); i < Math.min(minutes, to); i++) {
      rates[i] += amount;
    }
  }
}
