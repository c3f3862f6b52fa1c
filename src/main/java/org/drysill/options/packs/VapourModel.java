package org.drysill.options.packs;

import java.util.Arrays;
import java.util.List;
import org.drysill.assess.model.ZonedHome;
import org.drysill.physics.flow.CombinedFlow;
import org.drysill.physics.zones.AirRoutes;
import org.drysill.physics.zones.LaneHome;
import org.drysill.physics.zones.Pane;
import org.drysill.physics.zones.SteadyZones;
import org.drysill.physics.zones.ZoneFlows;
import org.drysill.physics.zones.ZoneVapour;

/**
 * By what measures multiply the vapour excess of each zone in each month.
 *
 * <pre>
 * ratio(i, m) = v'(i, m) / v(i, m)
 * Q' = Q + C(S', E', I') − C(S, E, I),  C = min(S, E) + √((S − E)² + I²)
 * </pre>
 *
 * <p>v excess in the steady state of the zones today, v' with the measures; Q outdoor air that the
 * readings leave, S and E what fans supply and extract, I leaks, each time-averaged [m³/s]. Only
 * ratios leave it, so that the excess that was read carries the result. Safe for many threads.
 */
final class VapourModel {
  static final int MONTHS = 12;

  private final ZonedHome home;
  private final AirRoutes routes;
  private final List<Pane> panes;
  private final double[] exchange;
  private final double[] water;
  private final double[] never;
  private final double[][] today;

  /**
   * The model.
   *
   * @param saturation what each pane bears today over the air outdoors, by month [kg/m³]
   */
  VapourModel(ZonedHome home, double[][] saturation) {
    this.home = home;
    this.routes =
        new AirRoutes(
            home.zones().stream().mapToDouble(ZonedHome.Zone::shareOfLeaksIn).toArray(),
            home.zones().stream().mapToDouble(ZonedHome.Zone::shareOfLeaksOut).toArray(),
            home.ways().stream()
                .map(w -> new AirRoutes.Door(w.one(), w.other(), w.weight()))
                .toList());
    this.panes = home.panes().stream().map(p -> new Pane(p.zone(), p.transferM3S())).toList();
    this.exchange = home.ways().stream().mapToDouble(ZonedHome.Way::bothWaysM3S).toArray();
    this.water = home.zones().stream().mapToDouble(ZonedHome.Zone::waterKgS).toArray();
    this.never = new double[panes.size()];
    Arrays.fill(never, Double.MAX_VALUE);
    this.today = excess(new VapourChange(home.zones().size()), saturation);
  }

  /**
   * The ratios by month and zone.
   *
   * @param change what the measures do
   * @param saturation what each pane bears with them, by month
   */
  double[][] ratios(VapourChange change, double[][] saturation) {
    double[][] ratios = excess(change, saturation);
    for (int m = 0; m < MONTHS; m++) {
      // Months in which no pane is wet share one row, which must not be divided twice.
      double[] row = ratios[m].clone();
      for (int i = 0; i < row.length; i++) {
        row[i] = today[m][i] > 0 ? row[i] / today[m][i] : 1;
      }
      ratios[m] = row;
    }
    return ratios;
  }

  /** The steady state of each zone with the measures and without panes [kg/m³]. */
  double[] dry(VapourChange change) {
    return contents(new SteadyZones(flows(change), panes).at(given(change), 0, never));
  }

  private double[][] excess(VapourChange change, double[][] saturation) {
    SteadyZones zones = new SteadyZones(flows(change), panes);
    double[] given = given(change);
    double[] dry = contents(zones.at(given, 0, never));
    double[][] months = new double[MONTHS][];
    for (int m = 0; m < MONTHS; m++) {
      months[m] = isWet(dry, saturation[m]) ? contents(zones.at(given, 0, saturation[m])) : dry;
    }
    return months;
  }

  /** The panes that take water. */
  List<Pane> panes() {
    return panes;
  }

  /** The air, panes and water with the measures, to be followed hour by hour. */
  LaneHome lane(VapourChange change) {
    return new LaneHome(flows(change), panes, given(change));
  }

  /** Water that goes into the air of each zone with the measures [kg/s]. */
  double[] given(VapourChange change) {
    double[] given = new double[water.length];
    for (int i = 0; i < given.length; i++) {
      given[i] = water[i] * change.waterLeft[i];
    }
    return given;
  }

  private boolean isWet(double[] contents, double[] saturation) {
    boolean wet = false;
    for (int p = 0; p < saturation.length; p++) {
      wet |= contents[panes.get(p).zone()] > saturation[p];
    }
    return wet;
  }

  private double[] contents(ZoneVapour vapour) {
    double[] contents = new double[water.length];
    for (int i = 0; i < contents.length; i++) {
      contents[i] = vapour.content(i);
    }
    return contents;
  }

  /** The flows with the measures. What comes through new openings is leaked into their rooms. */
  ZoneFlows flows(VapourChange change) {
    int n = water.length;
    double[] supply = new double[n];
    double[] extract = new double[n];
    double supplyToday = 0;
    double extractToday = 0;
    for (int i = 0; i < n; i++) {
      ZonedHome.Zone zone = home.zones().get(i);
      supply[i] = Math.max(0, zone.supplyM3S() - change.supplyGone[i]) + change.supply[i];
      extract[i] = Math.max(0, zone.extractM3S() - change.extractGone[i]) + change.extract[i];
      supplyToday += zone.supplyM3S();
      extractToday += zone.extractM3S();
    }
    double opened = sum(change.openings);
    double leaks = home.leaksM3S() + opened;
    double added =
        CombinedFlow.totalM3S(sum(supply), sum(extract), leaks)
            - CombinedFlow.totalM3S(supplyToday, extractToday, home.leaksM3S());
    // Fans that switch do not add up as their means do; what they move comes in at the least.
    double fans = Math.max(sum(supply), sum(extract));
    double all = Math.max(fans, home.outdoorAirM3S() + added);
    if (opened > 0) {
      double in = (all - sum(supply)) / leaks;
      double out = (all - sum(extract)) / leaks;
      for (int i = 0; i < n; i++) {
        supply[i] += in * change.openings[i];
        extract[i] += out * change.openings[i];
      }
    }
    return routes.flows(supply, extract, all, exchange);
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
