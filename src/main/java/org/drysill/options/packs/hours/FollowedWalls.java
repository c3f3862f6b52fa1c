package org.drysill.options.packs.hours;

/** The walls of a room in the months in which they may be at risk, until one is in each sample. */
final class FollowedWalls {
  private final WallMonths walls;
  private final int zone;
  private final boolean[][] needed;
  private final double[][] sums;
  private final int[] hours = new int[RingYear.MONTHS];
  private final boolean[] atRisk;
  private final boolean[] needs = new boolean[RingYear.MONTHS];

  /**
   * The walls of a room.
   *
   * @param zone its zone
   * @param most the most that the zone holds in each sample [kg/m³]
   */
  FollowedWalls(WallMonths walls, int zone, double[] most) {
    this.walls = walls;
    this.zone = zone;
    this.atRisk = new boolean[walls.lanes()];
    this.needed = new boolean[RingYear.MONTHS][walls.lanes()];
    this.sums = new double[RingYear.MONTHS][walls.lanes()];
    for (int m = 0; m < needed.length; m++) {
      for (int l = 0; l < atRisk.length; l++) {
        needed[m][l] = walls.mayBeAtRisk(most[l], m, l);
      }
    }
    look();
  }

  /** True where a month is to be followed. */
  boolean needs(int month) {
    return needs[month];
  }

  void take(int half, int month, ZoneHalves zones) {
    if (needs[month]) {
      walls.sum(half, zones, zone, sums[month]);
      hours[month] += RingYear.HALF_DAY;
      if (hours[month] == RingYear.hours(month)) {
        for (int l = 0; l < atRisk.length; l++) {
          atRisk[l] |= walls.isAtRisk(sums[month][l], month, l);
        }
        look();
      }
    }
  }

  /** A month is needed by samples in which it may be at risk and no other was. */
  private void look() {
    for (int m = 0; m < needs.length; m++) {
      needs[m] = false;
      for (int l = 0; l < atRisk.length; l++) {
        needs[m] |= needed[m][l] && !atRisk[l];
      }
    }
  }

  boolean isAtRisk(int lane) {
    return atRisk[lane];
  }
}
