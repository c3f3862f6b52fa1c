package org.drysill.options.packs.hours;

import java.util.Map;

/** A room in a state of its fabric, in a sample. */
final class RoomHours {
  private final RingYear year;
  private final HourlyRoom room;
  private final RoomAir air;
  private final double[] factors;
  private final PaneHours[] panes;
  private final WallMonths walls;
  private final Map<PaneKey, PaneHours> known;

  /** Panes are the same where all this is: room, temperature indoors, factor. */
  record PaneKey(int room, Indoors indoors, double factor) {}

  /**
   * A room.
   *
   * @param known the panes of the sample, by all that makes them
   */
  RoomHours(
      HourlyRoom room, RingYear year, RoomAir air, int sample, Map<PaneKey, PaneHours> known) {
    this.year = year;
    this.room = room;
    this.air = air;
    this.known = known;
    this.factors = room.panes(sample);
    this.panes = new PaneHours[factors.length];
    this.walls = new WallMonths(year, room.indoors, air, room.walls(sample));
  }

  int zone() {
    return room.zone;
  }

  WallMonths walls() {
    return walls;
  }

  int panes() {
    return panes.length;
  }

  /** A pane, the coldest first. */
  PaneHours pane(int number) {
    if (panes[number] == null) {
      panes[number] =
          known.computeIfAbsent(
              new PaneKey(room.room, room.indoors, factors[number]),
              key -> new PaneHours(year, key.indoors(), air, key.factor()));
    }
    return panes[number];
  }
}
