package org.drysill.options.packs.hours;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** A room in a state of its fabric, in each sample. */
final class RoomHours {
  private final RingYear year;
  private final HourlyRoom room;
  private final RoomAir air;
  private final double[][] factors;
  private final PaneHours[] panes;
  private final WallMonths walls;
  private final Map<PaneKey, PaneHours> known;

  /** Panes are the same where all this is: room, temperature indoors, factors. */
  record PaneKey(int room, Indoors indoors, List<Double> factors) {}

  /**
   * A room.
   *
   * @param first the number of the first sample
   * @param known the panes of the samples, by all that makes them
   */
  RoomHours(HourlyRoom room, RingYear year, RoomAir air, int first, Map<PaneKey, PaneHours> known) {
    int lanes = air.most.length;
    this.year = year;
    this.room = room;
    this.air = air;
    this.known = known;
    this.factors = room.panes(first, lanes);
    this.panes = new PaneHours[factors.length];
    this.walls = new WallMonths(year, room.indoors, air, room.walls(first, lanes));
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

  /** True where not all panes of the room, which has some, have the same factor in a sample. */
  boolean hasWarmer(int lane) {
    return factors[factors.length - 1][lane] > factors[0][lane];
  }

  /** A pane, in each sample the coldest first. */
  PaneHours pane(int number) {
    if (panes[number] == null) {
      panes[number] =
          known.computeIfAbsent(
              new PaneKey(room.room, room.indoors, Arrays.stream(factors[number]).boxed().toList()),
              key -> new PaneHours(year, key.indoors(), air, factors[number]));
    }
    return panes[number];
  }
}
