package org.drysill.options.packs;

import java.util.List;
import java.util.stream.IntStream;
import org.drysill.assess.surfaces.year.RoomYear;
import org.drysill.assess.surfaces.year.YearsAgain;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.physics.zones.HourlyZones;
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
  private final Packages packages;
  private final VapourModel model;
  private final HomeHours hours;
  private final double humid;
  private final double[][] today;

  PackageHours(HomeHours hours, Packages packages, VapourModel model, double humid) {
    this.hours = hours;
    this.packages = packages;
    this.model = model;
    this.humid = humid;
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
    double[] excess = hours.excess(state);
    for (int h = 0; h < excess.length; h++) {
      excess[h] *= now[h] > 0 ? then[h] / now[h] : 1;
    }
    return hours
        .years()
        .of(
            state.setpoint(),
            excess,
            state.limits().places().stream()
                .map(p -> new YearsAgain.Place(p.surface(), p.factor().likely(), p.material()))
                .toList(),
            humid);
  }

  /** Excess of each zone by hour [kg/m³]. */
  private double[][] excess(Bits members) {
    VapourChange change = packages.change(members);
    double[] stores = hours.stores();
    ZoneSteps steps =
        new ZoneSteps(
            List.of(model.flows(change)), stores, model.panes(), HomeHours.SECONDS_PER_HOUR);
    steps.start(model.dry(change));
    List<double[]> saturations = packages.panes(members).stream().map(hours::bears).toList();
    HourlyZones year =
        HourlyZones.run(steps, new Excess(model.given(change), saturations), hours.years().start());
    double[][] excess = new double[stores.length][HourlyYear.HOURS];
    for (int i = 0; i < stores.length; i++) {
      for (int h = 0; h < HourlyYear.HOURS; h++) {
        excess[i][h] = year.content(i, h);
      }
    }
    return excess;
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
