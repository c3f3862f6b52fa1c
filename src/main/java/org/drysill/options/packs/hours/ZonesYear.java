package org.drysill.options.packs.hours;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.physics.zones.ExcessSteps;
import org.drysill.physics.zones.Pane;

/**
 * The year of packages whose zones are the same, in a sample. Of each room its coldest pane is
 * followed; no other is wet for longer, but where it was doubtful.
 */
final class ZonesYear {
  private final RingYear year;
  private final ZoneHalves halves;
  private final List<List<RoomHours>> packages;
  private final Map<PaneHours, FollowedPane> panes = new LinkedHashMap<>();
  private final Map<RoomHours, FollowedWalls> walls = new LinkedHashMap<>();
  private final boolean each;
  private final FollowedPane[] allPanes;
  private final FollowedWalls[] allWalls;

  /**
   * Of some packages.
   *
   * @param zones their zones at the steady state
   * @param packages the rooms of each
   * @param each true where all panes of a room are followed
   */
  ZonesYear(
      RingYear year,
      ExcessSteps zones,
      List<Pane> taking,
      HourlyGlass glass,
      List<List<RoomHours>> packages,
      boolean each) {
    this.year = year;
    this.halves = new ZoneHalves(zones, taking, glass);
    this.packages = packages;
    this.each = each;
    for (List<RoomHours> rooms : packages) {
      for (RoomHours room : rooms) {
        int zone = room.zone();
        double most = zones.most(zone);
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
    double[] contents = halves.contents();
    for (FollowedPane pane : allPanes) {
      pane.take(half, contents);
    }
    for (FollowedWalls of : allWalls) {
      of.take(half, month, contents);
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
        && packages.stream()
            .flatMap(List::stream)
            .anyMatch(r -> r.panes() > 1 && panes.get(r.pane(0)).film().isDoubtful());
  }

  /** What became of each package. */
  List<YearOutcome> outcomes() {
    return packages.stream().map(this::outcome).toList();
  }

  private YearOutcome outcome(List<RoomHours> rooms) {
    int mornings = 0;
    boolean sound = true;
    for (RoomHours room : rooms) {
      for (int p = 0; p < followed(room); p++) {
        mornings = Math.max(mornings, panes.get(room.pane(p)).film().mornings());
      }
      sound &= !walls.get(room).isAtRisk();
    }
    return new YearOutcome(mornings, sound);
  }
}
