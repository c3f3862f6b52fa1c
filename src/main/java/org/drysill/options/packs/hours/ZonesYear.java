package org.drysill.options.packs.hours;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The year of packages whose zones are the same, in each sample. Of each room its coldest pane is
 * followed; no other is wet for longer, but where it was doubtful.
 */
final class ZonesYear {
  private final RingYear year;
  private final ZoneHalves halves;
  private final int lanes;
  private final List<List<RoomHours>> packages;
  private final Map<PaneHours, FollowedPane> panes = new LinkedHashMap<>();
  private final Map<RoomHours, FollowedWalls> walls = new LinkedHashMap<>();
  private final boolean each;
  private final FollowedPane[] allPanes;
  private final FollowedWalls[] allWalls;

  /**
   * Of some packages.
   *
   * @param halves their zones
   * @param packages the rooms of each
   * @param each true where all panes of a room are followed
   */
  ZonesYear(
      RingYear year, ZoneHalves halves, int lanes, List<List<RoomHours>> packages, boolean each) {
    this.year = year;
    this.halves = halves;
    this.lanes = lanes;
    this.packages = packages;
    this.each = each;
    for (List<RoomHours> rooms : packages) {
      for (RoomHours room : rooms) {
        int zone = room.zone();
        double[] most = new double[lanes];
        Arrays.setAll(most, l -> halves.most(zone, l));
        for (int p = 0; p < followed(room); p++) {
          panes.computeIfAbsent(room.pane(p), pane -> new FollowedPane(pane, zone, most));
        }
        walls.computeIfAbsent(room, r -> new FollowedWalls(r.walls(), zone, most));
      }
    }
    allPanes = panes.values().toArray(FollowedPane[]::new);
    allWalls = walls.values().toArray(FollowedWalls[]::new);
  }

  private int followed(RoomHours room) {
    return each ? room.panes() : Math.min(1, room.panes());
  }

  /** Back to the steady state of the zones, before the year. */
  void restart() {
    halves.restart();
  }

  /** Goes through a half day before the year begins. */
  void pass(int half) {
    halves.pass(half);
  }

  /** Goes through a half day of the year. */
  void follow(int half) {
    int month = year.month[half];
    if (!isLookedAt(half, month)) {
      halves.pass(half);
      return;
    }
    halves.follow(half);
    for (FollowedPane pane : allPanes) {
      pane.take(half, halves);
    }
    for (FollowedWalls of : allWalls) {
      of.take(half, month, halves);
    }
  }

  private boolean isLookedAt(int half, int month) {
    for (FollowedPane pane : allPanes) {
      if (pane.mayChange(half)) {
        return true;
      }
    }
    for (FollowedWalls of : allWalls) {
      if (of.needs(month)) {
        return true;
      }
    }
    return false;
  }

  /** True where a warmer pane than the coldest of a room may have been wet for longer. */
  boolean isDoubtful() {
    return !each
        && packages.stream().flatMap(List::stream).anyMatch(r -> r.panes() > 1 && isDoubtful(r));
  }

  private boolean isDoubtful(RoomHours room) {
    PaneHours.Film film = panes.get(room.pane(0)).film();
    return IntStream.range(0, lanes).anyMatch(l -> film.isDoubtful(l) && room.hasWarmer(l));
  }

  /** What became of each package in each sample. */
  List<List<YearOutcome>> outcomes() {
    return packages.stream()
        .map(rooms -> IntStream.range(0, lanes).mapToObj(l -> outcome(rooms, l)).toList())
        .toList();
  }

  private YearOutcome outcome(List<RoomHours> rooms, int lane) {
    int mornings = 0;
    boolean sound = true;
    for (RoomHours room : rooms) {
      for (int p = 0; p < followed(room); p++) {
        mornings = Math.max(mornings, panes.get(room.pane(p)).film().mornings(lane));
      }
      sound &= !walls.get(room).isAtRisk(lane);
    }
    return new YearOutcome(mornings, sound);
  }
}
