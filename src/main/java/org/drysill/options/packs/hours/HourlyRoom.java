package org.drysill.options.packs.hours;

import java.util.List;
import java.util.stream.DoubleStream;

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

  /** The factors of its panes in a sample, coldest first, each once. */
  double[] panes(int sample) {
    return factors(panes, sample).distinct().toArray();
  }

  /** Those of its walls. */
  double[] walls(int sample) {
    return factors(walls, sample).toArray();
  }

  private static DoubleStream factors(List<DrawnFactor> places, int sample) {
    return places.stream().mapToDouble(p -> p.in(sample)).sorted();
  }
}
