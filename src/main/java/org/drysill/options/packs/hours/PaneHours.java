package org.drysill.options.packs.hours;

import org.drysill.physics.air.SaturationTable;

/**
 * A pane of a temperature factor in each sample, and what settles on it.
 *
 * <pre>g = β (min(full; po + c·v) − ps(Tsi)) · 3600 s = min(cap; base + β·c·v)</pre>
 */
final class PaneHours {
  private static final int HOURS = RingYear.HALF_DAY;

  private final RingYear year;
  private final Indoors indoors;
  private final RoomAir air;
  private final double[] factors;
  private final double[] least;
  private final double[][] base;
  private final double[][] cap;
  private final double[] gain;
  private int bounded = -1;
  private int filled = -1;

  PaneHours(RingYear year, Indoors indoors, RoomAir air, double[] factors) {
    this.year = year;
    this.indoors = indoors;
    this.air = air;
    this.factors = factors;
    this.least = new double[factors.length];
    this.base = new double[HOURS][factors.length];
    this.cap = new double[HOURS][factors.length];
    this.gain = new double[factors.length];
  }

  /**
   * True where no content of its zone up to these makes it wet in a half day, in no sample [kg/m³].
   */
  boolean isDryUpTo(double[] most, int half) {
    if (bounded != half) {
      bound(half);
    }
    boolean dry = true;
    for (int l = 0; l < least.length; l++) {
      // Not a number, and so not dry, where nothing is borne and no content counts.
      dry &= most[l] <= least[l];
    }
    return dry;
  }

  private void bound(int half) {
    for (int l = 0; l < least.length; l++) {
      double coldest =
          year.coldest[half] + factors[l] * (indoors.coldest[half] - year.coldest[half]);
      double over =
          SaturationTable.pressurePa(coldest) - 2 * SaturationTable.ERROR_PA - air.moistest[l];
      least[l] = over / air.most[l];
    }
    bounded = half;
  }

  /** The film of water through a half day, in which the zone that it faces is followed. */
  void follow(Film film, int half, ZoneHalves zones, int zone) {
    if (filled != half) {
      fill(half);
    }
    boolean both = indoors.warmerOutdoors[half] || film.isWarmerWet;
    double clings = year.pane.clingsKgM2();
    for (int k = 0; k < HOURS; k++) {
      double[] contents = zones.contents(zone, k);
      HourLoops.settle(
          year.transfer, base[k], cap[k], air.perContent[k], contents, clings, gain, film.water);
      if (both) {
        int i = half * HOURS + k;
        // A pane is then at least as warm as the room, and air that is not full dries it.
        double less = year.celsius[i] > indoors.celsius[i] ? 1 : 0;
        HourLoops.settleWarmer(gain, less, cap[k], clings, film.water, film.warmer);
      }
      if (k == year.morning[half]) {
        film.look(both, year.pane.visibleKgM2());
      }
    }
    film.isWarmerWet = both && HourLoops.differ(film.warmer, film.water);
    if (!both) {
      System.arraycopy(film.water, 0, film.warmer, 0, film.water.length);
    }
  }

  private void fill(int half) {
    for (int k = 0; k < HOURS; k++) {
      int i = half * HOURS + k;
      HourLoops.pane(
          year.celsius[i],
          indoors.celsius[i],
          indoors.fullPa[i],
          year.transfer,
          factors,
          air.outdoorPa[k],
          base[k],
          cap[k]);
    }
    filled = half;
  }

  /**
   * Water on a pane in each sample [kg/m²], dry at first, and the most that there may be on any
   * warmer pane of the room: no more than on this one, save after hours in which it was warmer
   * outdoors.
   */
  static final class Film {
    private final double[] water;
    private final double[] warmer;
    private final int[] mornings;
    private final boolean[] isDoubtful;
    private boolean isWarmerWet;

    Film(int lanes) {
      water = new double[lanes];
      warmer = new double[lanes];
      mornings = new int[lanes];
      isDoubtful = new boolean[lanes];
    }

    private void look(boolean both, double visible) {
      for (int l = 0; l < water.length; l++) {
        boolean seen = water[l] >= visible;
        mornings[l] += seen ? 1 : 0;
        isDoubtful[l] |= both && !seen && warmer[l] >= visible;
      }
    }

    boolean isDry() {
      double sum = 0;
      for (int l = 0; l < warmer.length; l++) {
        sum += warmer[l];
      }
      return sum == 0;
    }

    int mornings(int lane) {
      return mornings[lane];
    }

    /** True where on some morning only a warmer pane of the room may have been seen wet. */
    boolean isDoubtful(int lane) {
      return isDoubtful[lane];
    }
  }
}
