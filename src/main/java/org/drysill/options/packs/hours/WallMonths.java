package org.drysill.options.packs.hours;

import org.drysill.physics.air.Iso13788Vapour;

/** At which mean vapour a month of the walls of a room is at risk, in each sample. */
final class WallMonths {
  private static final double SAFE = 1 - 1e-9;

  private final Indoors indoors;
  private final RoomAir air;

  /** limit · psat of the coldest wall [Pa]; infinite where there is none. */
  private final double[][] criticalPa;

  /**
   * The walls of a room.
   *
   * @param factors of each wall in each sample [1]
   */
  WallMonths(RingYear year, Indoors indoors, RoomAir air, double[][] factors) {
    this.indoors = indoors;
    this.air = air;
    this.criticalPa = new double[RingYear.MONTHS][air.most.length];
    for (int m = 0; m < criticalPa.length; m++) {
      double out = year.meanSlowCelsius[m];
      for (int l = 0; l < criticalPa[m].length; l++) {
        double critical = Double.POSITIVE_INFINITY;
        for (double[] factor : factors) {
          double surface = out + factor[l] * (indoors.meanCelsius[m] - out);
          critical =
              Math.min(critical, year.mouldLimit * Iso13788Vapour.saturationPressurePa(surface));
        }
        criticalPa[m][l] = critical;
      }
    }
  }

  int lanes() {
    return air.most.length;
  }

  /** True where a month may be at risk with contents of its zone up to this one [kg/m³]. */
  boolean mayBeAtRisk(double content, int month, int lane) {
    return air.meanOutdoorPa[month][lane] + air.meanPerContent[month][lane] * content
        >= criticalPa[month][lane] * SAFE;
  }

  /** Adds the vapour of a half day [Pa h], in which its zone is followed. */
  void sum(int half, ZoneHalves zones, int zone, double[] sums) {
    for (int k = 0; k < RingYear.HALF_DAY; k++) {
      double full = indoors.fullPa[half * RingYear.HALF_DAY + k];
      HourLoops.vapour(full, air.outdoorPa[k], air.perContent[k], zones.contents(zone, k), sums);
    }
  }

  /** True where a month of this vapour is at risk [Pa h]. */
  boolean isAtRisk(double sum, int month, int lane) {
    return sum / RingYear.hours(month) >= criticalPa[month][lane];
  }
}
