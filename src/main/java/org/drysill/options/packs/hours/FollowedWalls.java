package org.drysill.options.packs.hours;

/** The walls of a room in the months in which they may be at risk, until one is. */
final class FollowedWalls {
  private final WallMonths walls;
  private final int from;
  private final boolean[] needed = new boolean[RingYear.MONTHS];
  private final double[] sums = new double[RingYear.MONTHS];
  private final int[] hours = new int[RingYear.MONTHS];
  private boolean atRisk;

  /**
   * The walls of a room.
   *
   * @param zone its zone
   * @param most the most that the zone holds [kg/m³]
   */
  FollowedWalls(WallMonths walls, int zone, double most) {
    this.walls = walls;
    this.from = zone * RingYear.HALF_DAY;
    for (int m = 0; m < needed.length; m++) {
      needed[m] = walls.mayBeAtRisk(most, m);
    }
  }

  boolean needs(int month) {
    return needed[month] && !atRisk;
  }

  void take(int half, int month, double[] contents) {
    if (needs(month)) {
      sums[month] += walls.sum(half, contents, from);
      hours[month] += RingYear.HALF_DAY;
      atRisk = hours[month] == RingYear.hours(month) && walls.isAtRisk(sums[month], month);
    }
  }

  boolean isAtRisk() {
    return atRisk;
  }
}
