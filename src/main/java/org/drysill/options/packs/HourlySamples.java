package org.drysill.options.packs;

import java.util.ArrayList;
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
import org.drysill.options.packs.hours.SampleYear;
import org.drysill.options.packs.hours.YearOutcome;

/**
 * Packages hour by hour in all samples. A sample is the work of one thread, which follows all
 * packages through it; nothing is added up across samples.
 */
final class HourlySamples {
  private static final Bits TODAY = new Bits(0, 0);

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
      IntStream.range(0, sampled.samples()).parallel().forEach(s -> follow(groups, today, s));
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

  private void follow(List<List<Looked>> groups, HourlyGlass today, int s) {
    VapourModel model = sampled.model(s);
    double[] stores = hours.stores();
    SampleYear sample =
        new SampleYear(
            year,
            s,
            sampled.surfaces().outdoorTimes(s),
            rooms.stream().mapToDouble(r -> sampled.surfaces().level(r)[s]).toArray(),
            model.panes(),
            model.steps(new VapourChange(stores.length), stores),
            today);
    List<List<YearOutcome>> outcomes =
        sample.of(
            groups.stream()
                .map(
                    group ->
                        new HourlyPackages(
                            model.steps(sampled.change(group.get(0).measures, s), stores),
                            group.get(0).glass,
                            group.stream().map(l -> l.rooms).toList()))
                .toList());
    for (int g = 0; g < groups.size(); g++) {
      for (int p = 0; p < groups.get(g).size(); p++) {
        groups.get(g).get(p).found.take(s, outcomes.get(g).get(p));
      }
    }
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
