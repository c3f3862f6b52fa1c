package org.drysill.assess.model;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.assess.Figure;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.ventilation.provided.OutdoorAir;
import org.drysill.physics.zones.AirRoutes;
import org.drysill.physics.zones.Pane;
import org.drysill.physics.zones.SteadyZones;
import org.drysill.physics.zones.ZoneFlows;
import org.drysill.physics.zones.ZoneVapour;
import org.drysill.physics.zones.fit.LogNormal;
import org.drysill.reference.model.ModelDefaults;

/**
 * The home as zones: from the unknowns, counted in standard deviations from what was believed, to
 * its flows, its water and the vapour excess of each room.
 */
final class HomeModel {
  private final Layout layout;
  private final AirRoutes routes;
  private final LogNormal leaks;
  private final LogNormal water;
  private final double[] parts;
  private final List<FanInModel> fans;
  private final List<LogNormal> exchanges;
  private final Glass glass;
  private final ModelDefaults defaults;
  private final Unknowns unknowns;

  /**
   * The home.
   *
   * @param infiltration air through leaks and ventilators [m³/s], likely above 0
   * @param moisture its sources, their water likely above 0
   */
  HomeModel(
      Layout layout,
      Figure infiltration,
      MoistureResult moisture,
      List<FanInModel> fans,
      Glass glass,
      ModelDefaults defaults) {
    this.layout = layout;
    this.routes = layout.routes();
    this.leaks = LogNormal.of(infiltration.value());
    this.water = LogNormal.of(moisture.itemised().value());
    this.parts = new WaterOfRooms(layout, defaults).parts(moisture);
    this.fans = List.copyOf(fans);
    this.exchanges =
        layout.ways().stream().map(way -> LogNormal.of(layout.exchange(way).range())).toList();
    this.glass = glass;
    this.defaults = defaults;
    this.unknowns = new Unknowns(fans.size(), layout.rooms().size(), layout.ways().size());
  }

  Unknowns unknowns() {
    return unknowns;
  }

  Layout layout() {
    return layout;
  }

  List<FanInModel> fans() {
    return fans;
  }

  boolean hasPanes() {
    return glass.saturation().length > 0;
  }

  /** What the list of sources has in a room [kg/s]. */
  double listed(int room) {
    return parts[room] * water.median();
  }

  /** Air through leaks and ventilators while no unbalanced fan runs [m³/s]. */
  double leaks(double[] z) {
    return leaks.at(z[Unknowns.LEAKS]);
  }

  /** All outdoor air, time-averaged [m³/s]. */
  double outdoorAir(double[] z) {
    List<OutdoorAir.Source> sources =
        IntStream.range(0, fans.size()).mapToObj(f -> fans.get(f).source(factor(f, z))).toList();
    return OutdoorAir.meanM3S(sources, leaks(z));
  }

  /** Mean flow of a fan [m³/s]. */
  double fan(int fan, double[] z) {
    return fans.get(fan).mean().likely() * factor(fan, z);
  }

  /** Water of all sources [kg/s]. */
  double water(double[] z) {
    return water.at(z[Unknowns.WATER]);
  }

  /** Water that goes into the air of each room [kg/s]. */
  double[] waterOfRooms(double[] z) {
    double[] rooms = new double[parts.length];
    double spread = defaults.roomPart().likely();
    for (int i = 0; i < rooms.length; i++) {
      rooms[i] = parts[i] * Math.exp(spread * z[unknowns.room(i)]);
    }
    double each = water(z) / Arrays.stream(rooms).sum();
    return Arrays.stream(rooms).map(part -> part * each).toArray();
  }

  /** What passes both ways through a door, the geometric mean of those of a kind [m³/s]. */
  double exchange(boolean open, double[] z) {
    return Math.exp(
        IntStream.range(0, layout.ways().size())
            .filter(w -> layout.ways().get(w).open() == open)
            .mapToDouble(w -> Math.log(exchange(w, z)))
            .average()
            .orElse(0));
  }

  /** The air flows. */
  ZoneFlows flows(double[] z) {
    double[] supply = new double[parts.length];
    double[] extract = new double[parts.length];
    for (int f = 0; f < fans.size(); f++) {
      fans.get(f).addTo(supply, extract, factor(f, z));
    }
    double[] exchange =
        IntStream.range(0, layout.ways().size()).mapToDouble(w -> exchange(w, z)).toArray();
    return routes.flows(supply, extract, outdoorAir(z), exchange);
  }

  /** Vapour excess of each room at the moment of the visit [kg/m³]. */
  double[] excess(double[] z) {
    ZoneVapour steady = steady(z);
    double moment = moment(z);
    return IntStream.range(0, parts.length).mapToDouble(i -> steady.content(i) * moment).toArray();
  }

  /** The moment of the visit against the mean of days [1]. */
  double moment(double[] z) {
    return Math.exp(defaults.moment().likely() * z[Unknowns.MOMENT]);
  }

  /** By what panes take more or less than is likely [1]. */
  double glass(double[] z) {
    return glass.factor().at(z[Unknowns.GLASS]);
  }

  /** Water that settles on all panes [kg/s]. */
  double settling(double[] z) {
    ZoneVapour steady = steady(z);
    return IntStream.range(0, glass.saturation().length).mapToDouble(steady::settling).sum();
  }

  /** Vapour over that of the air outdoors, which therefore counts as 0. */
  private ZoneVapour steady(double[] z) {
    double times = glass.factor().at(z[Unknowns.GLASS]);
    return new SteadyZones(flows(z), glass.panes(times)).at(waterOfRooms(z), 0, glass.saturation());
  }

  /** The home at a state of its unknowns. */
  ZonedHome zoned(double[] z) {
    double[] supply = new double[parts.length];
    double[] extract = new double[parts.length];
    for (int f = 0; f < fans.size(); f++) {
      fans.get(f).addTo(supply, extract, factor(f, z));
    }
    double[] in = layout.leaksIn();
    double[] out = layout.leaksOut();
    double[] rooms = waterOfRooms(z);
    return new ZonedHome(
        IntStream.range(0, parts.length)
            .mapToObj(
                i ->
                    new ZonedHome.Zone(
                        layout.rooms().get(i).id(), supply[i], extract[i], in[i], out[i], rooms[i]))
            .toList(),
        IntStream.range(0, layout.ways().size()).mapToObj(w -> way(w, z)).toList(),
        panes(z),
        outdoorAir(z),
        leaks(z),
        layout.hub(),
        glass.celsius());
  }

  private ZonedHome.Way way(int index, double[] z) {
    Layout.Way way = layout.ways().get(index);
    double weight = layout.exchange(way).range().likely();
    return new ZonedHome.Way(way.one(), way.other(), weight, exchange(index, z));
  }

  private List<ZonedHome.PaneOfWindow> panes(double[] z) {
    List<Pane> panes = glass.panes(glass.factor().at(z[Unknowns.GLASS]));
    return IntStream.range(0, panes.size())
        .mapToObj(
            p ->
                new ZonedHome.PaneOfWindow(
                    glass.window(p), panes.get(p).zone(), panes.get(p).transferM3S()))
        .toList();
  }

  private double exchange(int way, double[] z) {
    return exchanges.get(way).at(z[unknowns.way(way)]);
  }

  private double factor(int fan, double[] z) {
    return fans.get(fan).factor().at(z[unknowns.fan(fan)]);
  }
}
