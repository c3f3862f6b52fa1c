package org.drysill.options.packs;

import java.util.List;
import org.drysill.assess.surfaces.RoomLimits.PlaceLimits;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.options.packs.hours.YearOutcome;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.samples.TwoPieceNormal;
import org.drysill.physics.surface.HourlyAir;
import org.drysill.physics.surface.PaneYear;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.physics.zones.HourlyZones;
import org.drysill.physics.zones.ZoneSteps;

/**
 * A package in a sample, through every hour of every zone, pane and wall: nothing is passed over,
 * nothing is kept from one package to the next, saturation is by the formula.
 */
final class PlainHours {
  private final HomeHours hours;
  private final Packages packages;
  private final SampledPackages sampled;
  private final double mouldLimit;

  PlainHours(HomeHours hours, Packages packages, SampledPackages sampled, double mouldLimit) {
    this.hours = hours;
    this.packages = packages;
    this.sampled = sampled;
    this.mouldLimit = mouldLimit;
  }

  YearOutcome of(PackValue value, int s) {
    VapourChange none = new VapourChange(hours.stores().length);
    HourlyZones today = zones(none, new Bits(0, 0), s);
    HourlyZones then = zones(sampled.change(sampled.measures(value), s), value.members(), s);
    int mornings = 0;
    boolean sound = true;
    for (RoomState state : packages.rooms(value.members())) {
      double[] indoor = hours.years().indoorCelsius(state.setpoint());
      double[] vapour = vapour(state, today, then, indoor, s);
      HourlyAir panes = new HourlyAir(indoor, vapour, hours.years().outdoorCelsius());
      for (PlaceLimits place : state.limits().places()) {
        double factor =
            TwoPieceNormal.at(place.factor(), sampled.surfaces().deviates(place)[s], 0, 1);
        if (place.surface() == SurfaceClass.GLASS) {
          PaneYear year = PaneYear.of(factor, panes, hours.years().pane());
          mornings = Math.max(mornings, year.wetMornings());
        } else {
          sound &= isSound(factor, indoor, vapour);
        }
      }
    }
    return new YearOutcome(mornings, sound);
  }

  private double[] vapour(
      RoomState state, HourlyZones today, HourlyZones then, double[] indoor, int s) {
    double[] excess = hours.excess(state);
    double[] outdoors = hours.years().slowVapourPa();
    double[] times = sampled.surfaces().outdoorTimes(s);
    double level = sampled.surfaces().level(state)[s];
    double[] vapour = new double[HourlyYear.HOURS];
    for (int h = 0; h < vapour.length; h++) {
      double now = today.content(state.zone(), h);
      double ratio = now > 0 ? then.content(state.zone(), h) / now : 1;
      vapour[h] =
          Math.min(
              Iso13788Vapour.saturationPressurePa(indoor[h]),
              times[HourlyYear.month(h)] * outdoors[h] + level * excess[h] * ratio);
    }
    return vapour;
  }

  private boolean isSound(double factor, double[] indoor, double[] vapour) {
    double[] slow = hours.years().slowCelsius();
    double[] surface = new double[HourlyYear.HOURS];
    for (int h = 0; h < surface.length; h++) {
      surface[h] = slow[h] + factor * (indoor[h] - slow[h]);
    }
    double[] celsius = HourlyYear.monthlyMeans(surface);
    double[] pa = HourlyYear.monthlyMeans(vapour);
    boolean sound = true;
    for (int m = 0; m < pa.length; m++) {
      sound &= pa[m] < mouldLimit * Iso13788Vapour.saturationPressurePa(celsius[m]);
    }
    return sound;
  }

  private HourlyZones zones(VapourChange change, Bits members, int s) {
    VapourModel model = sampled.model(s);
    ZoneSteps steps =
        new ZoneSteps(List.of(model.flows(change)), hours.stores(), model.panes(), 3600);
    steps.start(model.dry(change));
    List<double[]> bears = packages.panes(members).stream().map(hours::bears).toList();
    double[] given = model.given(change);
    return HourlyZones.run(
        steps,
        new HourlyZones.Drive() {
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
            System.arraycopy(given, 0, zones, 0, zones.length);
          }

          @Override
          public void saturation(int hour, double[] panes) {
            for (int p = 0; p < panes.length; p++) {
              panes[p] = bears.get(p)[hour];
            }
          }
        },
        hours.years().start());
  }
}
