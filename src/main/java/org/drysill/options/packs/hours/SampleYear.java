package org.drysill.options.packs.hours;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.physics.zones.ExcessSteps;
import org.drysill.physics.zones.Pane;

/**
 * A year in one sample: what does not depend on the package, found once for all of them. Not for
 * two threads at once.
 */
public final class SampleYear {
  /**
   * The half days that are gone through before the first, so that the stores are filled: 30 days.
   */
  static final int BEFORE = 60;

  private final RingYear year;
  private final int sample;
  private final Outdoors outdoors;
  private final double[] levels;
  private final List<Pane> panes;
  private final double[][] today;
  private final RoomAir[] airs;
  private final Map<HourlyRoom, RoomHours> rooms = new HashMap<>();
  private final Map<RoomHours.PaneKey, PaneHours> known = new HashMap<>();

  /** The vapour outdoors in a sample. */
  static final class Outdoors {
    final double[] vapourPa = new double[HourlyYear.HOURS];
    final double[] moistest = new double[RingYear.HALVES];
    final double[] mean = new double[RingYear.MONTHS];

    Outdoors(RingYear year, double[] times) {
      for (int b = 0; b < moistest.length; b++) {
        double by = times[year.month[b]];
        moistest[b] = by * year.moistest[b];
        for (int i = b * RingYear.HALF_DAY; i < (b + 1) * RingYear.HALF_DAY; i++) {
          vapourPa[i] = by * year.vapourPa[i];
        }
      }
      for (int m = 0; m < mean.length; m++) {
        mean[m] = times[m] * year.meanVapourPa[m];
      }
    }
  }

  /**
   * A sample.
   *
   * @param year the hours outdoors
   * @param sample its number
   * @param outdoorTimes by what the vapour outdoors is more than is likely in each month [1]
   * @param levels by what the excess of each room is more than is likely [1]
   * @param panes the panes that take water
   * @param zones the home as it is
   * @param glass its panes as they are
   */
  public SampleYear(
      RingYear year,
      int sample,
      double[] outdoorTimes,
      double[] levels,
      List<Pane> panes,
      ExcessSteps zones,
      HourlyGlass glass) {
    this.year = year;
    this.sample = sample;
    this.outdoors = new Outdoors(year, outdoorTimes);
    this.levels = levels.clone();
    this.panes = List.copyOf(panes);
    this.airs = new RoomAir[levels.length];
    this.today = contents(zones, glass);
  }

  private double[][] contents(ExcessSteps zones, HourlyGlass glass) {
    double[][] contents = new double[zones.zones()][HourlyYear.HOURS];
    ZoneHalves halves = new ZoneHalves(zones, panes, glass);
    for (int b = -BEFORE; b < 0; b++) {
      halves.pass(b + RingYear.HALVES);
    }
    for (int b = 0; b < RingYear.HALVES; b++) {
      halves.follow(b);
      for (int z = 0; z < contents.length; z++) {
        System.arraycopy(
            halves.contents(),
            z * RingYear.HALF_DAY,
            contents[z],
            b * RingYear.HALF_DAY,
            RingYear.HALF_DAY);
      }
    }
    return contents;
  }

  /**
   * The year of packages, half day by half day, so that what all of them look at is at hand.
   *
   * @param groups packages by what they do to zones and panes
   * @return what becomes of each package of each group
   */
  public List<List<YearOutcome>> of(List<HourlyPackages> groups) {
    List<ZonesYear> years = groups.stream().map(g -> year(g, false)).toList();
    run(years);
    List<List<YearOutcome>> outcomes = new ArrayList<>();
    for (int g = 0; g < years.size(); g++) {
      outcomes.add(years.get(g).isDoubtful() ? again(groups.get(g)) : years.get(g).outcomes());
    }
    return outcomes;
  }

  /** With all panes of every room. */
  private List<YearOutcome> again(HourlyPackages group) {
    group.zones().restart();
    ZonesYear again = year(group, true);
    run(List.of(again));
    return again.outcomes();
  }

  private static void run(List<ZonesYear> years) {
    for (int half = -BEFORE; half < 0; half++) {
      for (ZonesYear one : years) {
        one.pass(half + RingYear.HALVES);
      }
    }
    for (int half = 0; half < RingYear.HALVES; half++) {
      for (ZonesYear one : years) {
        one.follow(half);
      }
    }
  }

  private ZonesYear year(HourlyPackages group, boolean each) {
    List<List<RoomHours>> hours =
        group.rooms().stream().map(rooms -> rooms.stream().map(this::hours).toList()).toList();
    return new ZonesYear(year, group.zones(), panes, group.glass(), hours, each);
  }

  private RoomHours hours(HourlyRoom room) {
    return rooms.computeIfAbsent(room, r -> new RoomHours(r, year, air(r), sample, known));
  }

  private RoomAir air(HourlyRoom room) {
    if (airs[room.room] == null) {
      airs[room.room] =
          new RoomAir(year, outdoors, room.excessPa, levels[room.room], today[room.zone]);
    }
    return airs[room.room];
  }
}
