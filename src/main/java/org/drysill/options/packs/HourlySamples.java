package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.drysill.assess.surfaces.RoomLimits.PlaceLimits;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.options.packs.FabricStates.PaneState;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.options.packs.hours.DrawnFactor;
import org.drysill.options.packs.hours.HourlyGlass;
import org.drysill.options.packs.hours.HourlyPackages;
import org.drysill.options.packs.hours.HourlyRoom;
import org.drysill.options.packs.hours.RingYear;
import org.drysill.options.packs.hours.SampleYears;
import org.drysill.options.packs.hours.YearOutcome;
import org.drysill.physics.zones.ExcessLanes;

/**
 * Packages hour by hour in all samples. Some samples side by side are the work of one thread, which
 * follows all packages through them; nothing is added up across samples, and which of them go side
 * by side does not depend on how many threads there are.
 */
final class HourlySamples {
  private static final Bits TODAY = new Bits(0, 0);

  /** What so many samples have of a package in half a day stays near the processor. */
  private static final int SIDE_BY_SIDE = 50;

  private final HomeHours hours;
  private final Packages packages;
  private final SampledPackages sampled;
  private final RingYear year;
  private final List<RoomState> rooms;
  private final Map<Bits, HourlyPackage> known = new HashMap<>();
  private final Map<RoomState, HourlyRoom> states = new HashMap<>();
  private final IdentityHashMap<List<PaneState>, HourlyGlass> glass = new IdentityHashMap<>();

  /**
   * Of a home.
   *
   * @param mouldLimit relative humidity from which a wall or corner is at risk [1]
   */
  HourlySamples(HomeHours hours, Packages packages, SampledPackages sampled, double mouldLimit) {
    this.hours = hours;
    this.packages = packages;
    this.sampled = sampled;
    this.year = new RingYear(hours.years(), mouldLimit);
    this.rooms = packages.rooms(TODAY);
  }

  /** A package that was looked at. */
  HourlyPackage of(PackValue value) {
    look(List.of(value));
    return known.get(value.members());
  }

  /** Looks at packages, best all at once: what a sample is without them is then found once. */
  void look(Collection<PackValue> values) {
    List<Looked> looked =
        values.stream()
            .filter(v -> !known.containsKey(v.members()))
            .map(v -> new Looked(v, new HourlyPackage(sampled.samples())))
            .toList();
    if (!looked.isEmpty()) {
      HourlyGlass today = glass(TODAY);
      List<List<Looked>> groups = alike(looked);
      int samples = sampled.samples();
      int parts = (samples + SIDE_BY_SIDE - 1) / SIDE_BY_SIDE;
      IntStream.range(0, parts)
          .parallel()
          .forEach(p -> follow(groups, today, p * samples / parts, (p + 1) * samples / parts));
      looked.forEach(l -> known.put(l.members, l.found));
    }
  }

  /** Packages that do the same to air, water and panes are followed together. */
  private static List<List<Looked>> alike(List<Looked> looked) {
    Map<Alike, List<Looked>> groups = new LinkedHashMap<>();
    looked.forEach(
        l ->
            groups
                .computeIfAbsent(new Alike(l.acting(), l.glass), key -> new ArrayList<>())
                .add(l));
    return List.copyOf(groups.values());
  }

  private record Alike(List<SampledMeasure> acting, HourlyGlass glass) {}

  private void follow(List<List<Looked>> groups, HourlyGlass glass, int from, int to) {
    HourlyPackages home = new HourlyPackages(zones(List.of(), from, to), glass, List.of());
    SampleYears years =
        new SampleYears(
            year,
            from,
            IntStream.range(from, to)
                .mapToObj(sampled.surfaces()::outdoorTimes)
                .toArray(double[][]::new),
            rooms.stream()
                .map(r -> Arrays.copyOfRange(sampled.surfaces().level(r), from, to))
                .toArray(double[][]::new),
            home);
    List<List<List<YearOutcome>>> outcomes =
        years.of(groups.stream().map(group -> packages(group, home, from, to)).toList());
    for (int g = 0; g < groups.size(); g++) {
      for (int p = 0; p < groups.get(g).size(); p++) {
        for (int s = from; s < to; s++) {
          groups.get(g).get(p).found.take(s, outcomes.get(g).get(p).get(s - from));
        }
      }
    }
  }

  private HourlyPackages packages(List<Looked> group, HourlyPackages home, int from, int to) {
    Looked one = group.get(0);
    boolean asToday = one.acting().isEmpty() && one.glass == home.glass();
    return new HourlyPackages(
        asToday ? home.zones() : zones(one.measures, from, to),
        one.glass,
        group.stream().map(l -> l.rooms).toList());
  }

  private ExcessLanes zones(List<SampledMeasure> measures, int from, int to) {
    return new ExcessLanes(
        IntStream.range(from, to)
            .mapToObj(s -> sampled.model(s).lane(sampled.change(measures, s)))
            .toList(),
        hours.stores(),
        HomeHours.SECONDS_PER_HOUR,
        RingYear.HALF_DAY);
  }

  private HourlyGlass glass(Bits members) {
    return glass.computeIfAbsent(
        packages.panes(members),
        panes ->
            new HourlyGlass(
                panes.stream().map(p -> year.ring(hours.bears(p))).toArray(double[][]::new)));
  }

  private List<HourlyRoom> rooms(Bits members) {
    List<RoomState> in = packages.rooms(members);
    return IntStream.range(0, in.size())
        .mapToObj(r -> states.computeIfAbsent(in.get(r), state -> room(r, state)))
        .toList();
  }

  private HourlyRoom room(int number, RoomState state) {
    return new HourlyRoom(
        year,
        number,
        state.zone(),
        state.setpoint(),
        year.ring(hours.excess(state)),
        factors(state, SurfaceClass.GLASS),
        factors(state, SurfaceClass.OPAQUE));
  }

  private List<DrawnFactor> factors(RoomState state, SurfaceClass surface) {
    return state.limits().places().stream()
        .filter(p -> p.surface() == surface)
        .map(this::factor)
        .toList();
  }

  private DrawnFactor factor(PlaceLimits place) {
    double[] deviates = sampled.surfaces().deviates(place);
    return new DrawnFactor(place.factor(), s -> deviates[s]);
  }

  /** A package that is looked at, with what of it does not depend on the sample. */
  private final class Looked {
    private final Bits members;
    private final HourlyPackage found;
    private final List<SampledMeasure> measures;
    private final List<HourlyRoom> rooms;
    private final HourlyGlass glass;

    Looked(PackValue value, HourlyPackage found) {
      this.members = value.members();
      this.found = found;
      this.measures = sampled.measures(value);
      this.rooms = rooms(members);
      this.glass = glass(members);
    }

    /** The measures that do anything to air or water. */
    List<SampledMeasure> acting() {
      return measures.stream().filter(SampledMeasure::actsOnVapour).toList();
    }
  }
}
