package org.drysill.options.packs.hours;

import java.util.BitSet;
import org.drysill.physics.air.SaturationTable;

/**
 * A pane of a temperature factor in a sample, and what settles on it.
 *
 * <pre>g = β (min(full; po + c·v) − ps(Tsi)) · 3600 s = min(cap; base + slope·v)</pre>
 */
final class PaneHours {
  private static final int HOURS = RingYear.HALF_DAY;

  private final RingYear year;
  private final Indoors indoors;
  private final RoomAir air;
  private final double factor;
  private final double[] least;
  private final double[] base;
  private final double[] cap;
  private final BitSet known = new BitSet(RingYear.HALVES);

  PaneHours(RingYear year, Indoors indoors, RoomAir air, double factor) {
    this.year = year;
    this.indoors = indoors;
    this.air = air;
    this.factor = factor;
    this.base = new double[year.celsius.length];
    this.cap = new double[year.celsius.length];
    this.least = new double[RingYear.HALVES];
    for (int b = 0; b < least.length; b++) {
      double coldest = year.coldest[b] + factor * (indoors.coldest[b] - year.coldest[b]);
      double over =
          SaturationTable.pressurePa(coldest) - 2 * SaturationTable.ERROR_PA - air.moistest[b];
      least[b] = over / air.most[b];
    }
  }

  /** True where no content of its zone up to this one makes it wet in a half day [kg/m³]. */
  boolean isDryUpTo(double content, int half) {
    // Not a number, and so not dry, where nothing is borne and no content counts.
    return content <= least[half];
  }

  /**
   * The film of water through a half day.
   *
   * @param film the water so far
   * @param contents of zones by hour [kg/m³]
   * @param from where those of its zone begin
   */
  void follow(Film film, int half, double[] contents, int from) {
    if (!known.get(half)) {
      fill(half);
    }
    if (film.warmer > film.water || indoors.warmerOutdoors[half]) {
      followBoth(film, half, contents, from);
    } else {
      film.water = follow(film, film.water, half, contents, from);
      film.warmer = film.water;
    }
  }

  /** Comparisons and no Math.min: the recurrence is the longest chain of the whole reckoning. */
  private double follow(Film film, double before, int half, double[] contents, int from) {
    int first = half * HOURS;
    int morning = year.morning[half];
    double clings = year.pane.clingsKgM2();
    double water = before;
    for (int k = 0; k < HOURS; k++) {
      water += gain(first + k, contents[from + k]);
      water = water > 0 ? water : 0;
      water = water < clings ? water : clings;
      if (k == morning && water >= year.pane.visibleKgM2()) {
        film.mornings++;
      }
    }
    return water;
  }

  private double gain(int i, double content) {
    double gain = base[i] + year.transfer * air.perContent[i] * content;
    return gain < cap[i] ? gain : cap[i];
  }

  /** Beside its own water the most that a warmer pane of the room may have. */
  private void followBoth(Film film, int half, double[] contents, int from) {
    for (int k = 0; k < HOURS; k++) {
      int i = half * HOURS + k;
      double gain = gain(i, contents[from + k]);
      // A pane is then at least as warm as the room, and air that is not full dries it.
      boolean warmerOutdoors = year.celsius[i] > indoors.celsius[i];
      film.water = year.onPane(film.water + gain);
      film.warmer = year.onPane(film.warmer + (warmerOutdoors ? gain - cap[i] : gain));
      film.warmer = Math.max(film.warmer, film.water);
      if (k == year.morning[half]) {
        film.mornings += year.isSeen(film.water) ? 1 : 0;
        film.isDoubtful |= year.isSeen(film.warmer) && !year.isSeen(film.water);
      }
    }
  }

  private void fill(int half) {
    for (int i = half * HOURS; i < (half + 1) * HOURS; i++) {
      double bears =
          SaturationTable.pressurePa(
              year.celsius[i] + factor * (indoors.celsius[i] - year.celsius[i]));
      base[i] = year.transfer * (air.outdoorPa[i] - bears);
      cap[i] = year.transfer * (indoors.fullPa[i] - bears);
    }
    known.set(half);
  }

  /**
   * Water on a pane [kg/m²], dry at first, and the most that there may be on any warmer pane of the
   * room: no more than on this one, save after hours in which it was warmer outdoors.
   */
  static final class Film {
    private double water;
    private double warmer;
    private int mornings;
    private boolean isDoubtful;

    boolean isDry() {
      return warmer == 0;
    }

    int mornings() {
      return mornings;
    }

    /** True where on some morning only a warmer pane of the room may have been seen wet. */
    boolean isDoubtful() {
      return isDoubtful;
    }
  }
}
