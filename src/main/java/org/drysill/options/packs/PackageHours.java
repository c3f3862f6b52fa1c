package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.assess.Assessment;
import org.drysill.assess.OutdoorHours;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.model.ZonedHome;
import org.drysill.assess.surfaces.VapourOfRooms;
import org.drysill.assess.surfaces.year.RoomYear;
import org.drysill.assess.surfaces.year.YearsAgain;
import org.drysill.options.OptionsBasis;
import org.drysill.options.packs.FabricStates.PaneState;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.physics.zones.HourlyZones;
import org.drysill.physics.zones.Pane;
import org.drysill.physics.zones.ZoneSteps;

/**
 * Packages hour by hour over a year, at the likely values.
 *
 * <pre>
 * e(i, h)        excess of zone i over the air outdoors, M V de/dt = G − what leaves − what settles
 * Δp'(r, h) = Δp(r, Te(h)) · e'(i, h) / e(i, h)
 * </pre>
 *
 * <p>As by month only the ratio of the excess with the measures to that of today leaves the model,
 * so that the excess that was read carries the result; today is what the chapter on cold surfaces
 * has. Panes take what settles on them in each hour, and the store of the rooms evens it out.
 */
final class PackageHours {
  private static final double SECONDS_PER_HOUR = 3600;

  private final Packages packages;
  private final VapourModel model;
  private final ZonedHome home;
  private final double[] stores;
  private final YearsAgain years;
  private final double humid;
  private final VapourOfRooms vapours;
  private final List<RoomFacts> rooms;
  private final double[][] today;

  PackageHours(
      Assessment assessment,
      OptionsBasis basis,
      HomeZones zones,
      Packages packages,
      VapourModel model) {
    this.packages = packages;
    this.model = model;
    this.home = zones.home();
    this.stores = stores(assessment, zones, basis.defaults().store().likely());
    this.years =
        new YearsAgain(
            OutdoorHours.of(assessment.home().climate(), basis.tables().hours().weather()),
            basis.tables());
    this.humid = basis.defaults().humidAir().likely();
    this.vapours = new VapourOfRooms(assessment.vapour(), basis.tables().defaults());
    this.rooms = assessment.home().rooms();
    this.today = excess(new Bits(0, 0));
  }

  /** The year of a package: of each thing the worst place. */
  RoomYear of(Bits members) {
    double[][] then = members.equals(new Bits(0, 0)) ? today : excess(members);
    List<RoomState> states = packages.rooms(members);
    List<RoomYear> found =
        IntStream.range(0, states.size())
            .parallel()
            .mapToObj(r -> of(states.get(r), then[states.get(r).zone()]))
            .toList();
    return RoomYear.worst(found.stream());
  }

  private RoomYear of(RoomState state, double[] then) {
    double[] now = today[state.zone()];
    double[] excess = years.excess(vapours.of(room(state))::excessAt);
    for (int h = 0; h < excess.length; h++) {
      excess[h] *= now[h] > 0 ? then[h] / now[h] : 1;
    }
    return years.of(
        state.setpoint(),
        excess,
        state.limits().places().stream()
            .map(p -> new YearsAgain.Place(p.surface(), p.factor().likely(), p.material()))
            .toList(),
        humid);
  }

  private RoomFacts room(RoomState state) {
    return rooms.stream()
        .filter(r -> r.id().equals(state.limits().room()))
        .findFirst()
        .orElseThrow();
  }

  /** What the air of each zone holds; of the home as one zone the air of all heated rooms. */
  private static double[] stores(Assessment assessment, HomeZones zones, double times) {
    List<RoomFacts> rooms = zones.rooms();
    return rooms.isEmpty()
        ? new double[] {times * assessment.home().volume().likely()}
        : rooms.stream().mapToDouble(r -> times * r.volume().likely()).toArray();
  }

  /** Excess of each zone by hour [kg/m³]. */
  private double[][] excess(Bits members) {
    VapourChange change = packages.change(members);
    List<Pane> panes = home.panes().stream().map(p -> new Pane(p.zone(), p.transferM3S())).toList();
    ZoneSteps steps = new ZoneSteps(List.of(model.flows(change)), stores, panes, SECONDS_PER_HOUR);
    HourlyZones year =
        HourlyZones.run(steps, new Excess(model.given(change), saturations(members)));
    double[][] excess = new double[stores.length][HourlyYear.HOURS];
    for (int i = 0; i < stores.length; i++) {
      for (int h = 0; h < HourlyYear.HOURS; h++) {
        excess[i][h] = year.content(i, h);
      }
    }
    return excess;
  }

  /** What each pane bears over the air outdoors by hour [kg/m³]. */
  private List<double[]> saturations(Bits members) {
    double content = MoistAir.vapourContentKgM3(home.celsius(), 1);
    List<double[]> all = new ArrayList<>();
    for (PaneState pane : packages.panes(members)) {
      double[] bears = years.bears(pane.factor(), pane.setpoint());
      for (int h = 0; h < bears.length; h++) {
        bears[h] *= content;
      }
      all.add(bears);
    }
    return all;
  }

  /** The same water in all hours, over the air outdoors. */
  private static final class Excess implements HourlyZones.Drive {
    private final double[] water;
    private final List<double[]> saturations;

    Excess(double[] water, List<double[]> saturations) {
      this.water = water;
      this.saturations = saturations;
    }

    @Override
    public int state(int hour) {
      return 0;
    }

    @Override
    public double outdoor(int hour) {
      return 0;
    }

    @Override
    public void production(int hour, double[] zones) {
      System.arraycopy(water, 0, zones, 0, zones.length);
    }

    @Override
    public void saturation(int hour, double[] panes) {
      for (int p = 0; p < panes.length; p++) {
        panes[p] = saturations.get(p)[hour];
      }
    }
  }
}
