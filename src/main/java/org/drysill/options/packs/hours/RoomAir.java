package org.drysill.options.packs.hours;

import java.util.Arrays;

/**
 * What the content of its zone makes of the vapour of a room in each sample, half day by half day:
 * pi = po + c·v, never more than saturation.
 *
 * <pre>po outdoors,  c = Δp·x / v(today)</pre>
 *
 * <p>Δp likely excess today, x by what it is more in the sample. Where a zone holds nothing today
 * its room keeps its excess, which is then part of po.
 */
final class RoomAir {
  private final RingYear year;
  private final Outdoors outdoors;
  private final double[] excess;
  private final int zone;

  /** x, of samples in which the zone holds something and of those in which it holds nothing. */
  private final double[] level;

  private final double[] kept;

  /** 1 in samples in which the zone holds nothing, else 0. */
  private final double[] nothing;

  private final boolean keeps;

  /** po by hour of the half day [Pa], and the most of its hours. */
  final double[][] outdoorPa;

  final double[] moistest;

  /** c by hour of the half day [Pa/(kg/m³)], and the most of its hours. */
  final double[][] perContent;

  final double[] most;

  /** Means of months of both. */
  final double[][] meanOutdoorPa;

  final double[][] meanPerContent;

  /**
   * A room.
   *
   * @param levels x of each sample [1]
   * @param today the zones as they are
   */
  RoomAir(RingYear year, Outdoors outdoors, HourlyRoom room, double[] levels, ZoneHalves today) {
    int lanes = levels.length;
    this.year = year;
    this.outdoors = outdoors;
    this.excess = room.excessPa;
    this.zone = room.zone;
    this.level = levels.clone();
    this.kept = new double[lanes];
    this.nothing = new double[lanes];
    for (int l = 0; l < lanes; l++) {
      if (!(today.most(zone, l) > 0)) {
        nothing[l] = 1;
        kept[l] = level[l];
        level[l] = 0;
      }
    }
    keeps = Arrays.stream(nothing).anyMatch(n -> n > 0);
    outdoorPa = keeps ? new double[RingYear.HALF_DAY][lanes] : outdoors.vapourPa;
    moistest = keeps ? new double[lanes] : outdoors.moistest;
    perContent = new double[RingYear.HALF_DAY][lanes];
    most = new double[lanes];
    meanPerContent = new double[RingYear.MONTHS][lanes];
    meanOutdoorPa = keeps ? meanOutdoorPa() : outdoors.mean;
  }

  private double[][] meanOutdoorPa() {
    double[][] means = new double[RingYear.MONTHS][level.length];
    double[] excessOf = year.means(excess);
    for (int m = 0; m < means.length; m++) {
      HourLoops.add(excessOf[m], kept, outdoors.mean[m], means[m], new double[level.length]);
    }
    return means;
  }

  /** Takes a half day, which outdoors and zones have come to. */
  void fill(int half, ZoneHalves today) {
    int first = half * RingYear.HALF_DAY;
    Arrays.fill(most, Double.NEGATIVE_INFINITY);
    for (int k = 0; k < RingYear.HALF_DAY; k++) {
      HourLoops.perContent(
          level, excess[first + k], today.contents(zone, k), nothing, perContent[k], most);
    }
    if (keeps) {
      Arrays.fill(moistest, Double.NEGATIVE_INFINITY);
      for (int k = 0; k < RingYear.HALF_DAY; k++) {
        HourLoops.add(excess[first + k], kept, outdoors.vapourPa[k], outdoorPa[k], moistest);
      }
    }
  }

  /** Adds a half day of the zones to the means of its month. */
  void sum(int half, ZoneHalves today) {
    int month = year.month[half];
    double share = 1.0 / RingYear.hours(month);
    for (int k = 0; k < RingYear.HALF_DAY; k++) {
      HourLoops.perContent(
          level,
          share * excess[half * RingYear.HALF_DAY + k],
          today.contents(zone, k),
          nothing,
          meanPerContent[month]);
    }
  }
}
