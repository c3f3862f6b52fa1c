package org.drysill.options.packs.hours;

import java.util.List;

/** A room in one state of its fabric. */
public final class HourlyRoom {
  final int room;
  final int zone;
  final Indoors indoors;
  final double[] excessPa;
  private final List<DrawnFactor> panes;
  private final List<DrawnFactor> walls;

  /**
   * A room.
   *
   * @param year the hours outdoors
   * @param room its number
   * @param zone the zone that its air belongs to
   * @param setpoint its temperature while it is heated [°C]
   * @param excessPa its likely vapour excess today, in the order of the ring [Pa]
   * @param panes its panes
   * @param walls its walls, corners and reveals
   */
  public HourlyRoom(
      RingYear year,
      int room,
      int zone,
      double setpoint,
      double[] excessPa,
      List<DrawnFactor> panes,
      List<DrawnFactor> walls) {
    this.room = room;
    this.zone = zone;
    this.indoors = year.indoors(setpoint);
    this.excessPa = excessPa;
    this.panes = List.copyOf(panes);
    this.walls = List.copyOf(walls);
  }

  /** The factors of its panes in some samples, in each of them the coldest first. */
  double[][] panes(int firstSample, int samples) {
    return factors(panes, firstSample, samples);
  }

  /** Those of its walls. */
  double[][] walls(int firstSample, int samples) {
    return factors(walls, firstSample, samples);
  }

  private static double[][] factors(List<DrawnFactor> places, int firstSample, int samples) {
    double[][] factors = new double[places.size()][samples];
    for (int l = 0; l < samples; l++) {
      int sample = firstSample + l;
      double[] sorted = places.stream().mapToDouble(p -> p.in(sample)).sorted().toArray();
      for (int p = 0; p < sorted.length; p++) {
        factors[p][l] = sorted[p];
      }
    }
    return factors;
  }
}
