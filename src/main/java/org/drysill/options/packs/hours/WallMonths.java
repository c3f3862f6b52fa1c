package org.drysill.options.packs.hours;

import org.drysill.physics.air.Iso13788Vapour;

/** At which mean vapour a month of the walls of a room is at risk, in a sample. */
final class WallMonths {
  private final Indoors indoors;
  private final RoomAir air;

  /** limit · psat of the coldest wall [Pa]; infinite where there is none. */
  private final double[] criticalPa = new double[RingYear.MONTHS];

  WallMonths(RingYear year, Indoors indoors, RoomAir air, double[] factors) {
    this.indoors = indoors;
    this.air = air;
    for (int m = 0; m < criticalPa.length; m++) {
      criticalPa[m] = Double.POSITIVE_INFINITY;
      for (double factor : factors) {
        double out = year.meanSlowCelsius[m];
        double surface = out + factor * (indoors.meanCelsius[m] - out);
        criticalPa[m] =
            Math.min(criticalPa[m], year.mouldLimit * Iso13788Vapour.saturationPressurePa(surface));
      }
    }
  }

  /** True where a month may be at risk with contents of its zone up to this one [kg/m³]. */
  boolean mayBeAtRisk(double content, int month) {
    return air.meanOutdoorPa[month] + air.meanPerContent[month] * content
        >= criticalPa[month] * (1 - 1e-9);
  }

  /** Adds the vapour of a half day [Pa h] of the zone whose contents begin at an index. */
  double sum(int half, double[] contents, int from) {
    double sum = 0;
    int first = half * RingYear.HALF_DAY;
    for (int k = 0; k < RingYear.HALF_DAY; k++) {
      int i = first + k;
      double inside = air.outdoorPa[i] + air.perContent[i] * contents[from + k];
      sum += inside < indoors.fullPa[i] ? inside : indoors.fullPa[i];
    }
    return sum;
  }

  /** True where a month of this vapour is at risk [Pa h]. */
  boolean isAtRisk(double sum, int month) {
    return sum / RingYear.hours(month) >= criticalPa[month];
  }
}
