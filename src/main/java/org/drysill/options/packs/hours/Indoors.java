package org.drysill.options.packs.hours;

import org.drysill.physics.air.SaturationTable;

/** Rooms at a set point, in the order of the ring. */
final class Indoors {
  /** Temperature [°C], and the most vapour that air of it holds [Pa]. */
  final double[] celsius;

  final double[] fullPa;

  /** The coldest of each half day. */
  final double[] coldest;

  /** True for half days in which it is at some hour warmer outdoors. */
  final boolean[] warmerOutdoors;

  /** Means of months [°C]. */
  final double[] meanCelsius;

  Indoors(RingYear year, double[] celsius) {
    this.celsius = celsius;
    this.coldest = RingYear.least(celsius);
    this.meanCelsius = year.means(celsius);
    this.fullPa = new double[celsius.length];
    this.warmerOutdoors = new boolean[RingYear.HALVES];
    for (int i = 0; i < celsius.length; i++) {
      fullPa[i] = SaturationTable.pressurePa(celsius[i]);
      warmerOutdoors[i / RingYear.HALF_DAY] |= year.celsius[i] > celsius[i];
    }
  }
}
