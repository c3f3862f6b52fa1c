package org.drysill.options.packs.hours;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The year in some samples, side by side: what does not depend on the package, found once for all
 * of them. Not for two threads at once.
 */
public final class SampleYears {
  /**
   * The half days that are gone through before the first, so that the stores are filled: 30 days.
   */
  static final int BEFORE = 60;

  private final RingYear year;
  private final int first;
  private final Outdoors outdoors;
  private final double[][] levels;
  private final HourlyPackages home;
  private final ZoneHalves today;
  private final Map<Integer, RoomAir> airs = new HashMap<>();
  private final Map<HourlyRoom, RoomHours> rooms = new HashMap<>();
  private final Map<RoomHours.PaneKey, PaneHours> known = new HashMap<>();

  /**
   * Samples.
   *
   * @param year the hours outdoors
   * @param first the number of the first
   * @param outdoorTimes of each sample, by what the vapour outdoors is more than is likely in each
   *     month [1]
   * @param levels of each room, by what its excess is more than is likely in each sample [1]
   * @param home the home as it is; its rooms are not asked for
   */
  public SampleYears(
      RingYear year, int first, double[][] outdoorTimes, double[][] levels, HourlyPackages home) {
    this.year = year;
    this.first = first;
    this.outdoors = new Outdoors(year, outdoorTimes);
    this.levels = levels;
    this.home = home;
    this.today = new ZoneHalves(home.zones(), home.glass());
  }

  /**
   * The year of packages, half day by half day, so that what all of them look at is at hand.
   *
   * @param groups packages by what they do to zones and panes; those that do nothing to either have
   *     the zones of the home as it is
   * @return what becomes of each package of each group in each sample
   */
  public List<List<List<YearOutcome>>> of(List<HourlyPackages> groups) {
    groups.stream()
        .flatMap(g -> g.rooms().stream())
        .flatMap(List::stream)
        .forEach(r -> airs.computeIfAbsent(r.room, key -> air(r)));
    months();
    List<ZonesYear> years = groups.stream().map(g -> year(g, false)).toList();
    run(years);
    List<List<List<YearOutcome>>> outcomes = new ArrayList<>();
    for (int g = 0; g < years.size(); g++) {
      outcomes.add(years.get(g).isDoubtful() ? again(groups.get(g)) : years.get(g).outcomes());
    }
    return outcomes;
  }

  private RoomAir air(HourlyRoom room) {
    return new RoomAir(year, outdoors, room, levels[room.room], today);
  }

  /** A year of the home as it is, for the means of months. */
  private void months() {
    before(List.of());
    for (int half = 0; half < RingYear.HALVES; half++) {
      today.follow(half);
      for (RoomAir air : airs.values()) {
        air.sum(half, today);
      }
    }
  }

  /** With all panes of every room. */
  private List<List<YearOutcome>> again(HourlyPackages group) {
    ZonesYear again = year(group, true);
    run(List.of(again));
    return again.outcomes();
  }

  private void run(List<ZonesYear> years) {
    before(years);
    for (int half = 0; half < RingYear.HALVES; half++) {
      come(half);
      for (ZonesYear one : years) {
        one.follow(half);
      }
    }
  }

  private void before(List<ZonesYear> years) {
    today.restart();
    years.forEach(ZonesYear::restart);
    for (int half = -BEFORE; half < 0; half++) {
      today.pass(half + RingYear.HALVES);
      for (ZonesYear one : years) {
        one.pass(half + RingYear.HALVES);
      }
    }
  }

  /** What all packages look at in a half day. */
  private void come(int half) {
    outdoors.fill(half);
    today.follow(half);
    for (RoomAir air : airs.values()) {
      air.fill(half, today);
    }
  }

  private ZonesYear year(HourlyPackages group, boolean each) {
    List<List<RoomHours>> hours =
        group.rooms().stream().map(of -> of.stream().map(this::hours).toList()).toList();
    ZoneHalves halves =
        group.zones() == home.zones() ? today : new ZoneHalves(group.zones(), group.glass());
    return new ZonesYear(year, halves, home.zones().lanes(), hours, each);
  }

  private RoomHours hours(HourlyRoom room) {
    return rooms.computeIfAbsent(room, r -> new RoomHours(r, year, airs.get(r.room), first, known));
  }
}
