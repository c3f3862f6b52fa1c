package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.drysill.assess.Assessment;
import org.drysill.assess.model.HomeState;
import org.drysill.assess.model.HomeStates;
import org.drysill.assess.model.ZonedHome;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;
import org.drysill.physics.flow.CombinedFlow;
import org.drysill.physics.samples.TwoPieceNormal;

/**
 * The zones of a home once what comes before every measure is done: leaks mended, fans that stood
 * still running.
 *
 * <pre>
 * G'(i) = G(i) · (1 − s) / (1 − s + s·l)      Q' = Q + C(S', E', I) − C(S, E, I)
 * ratio(i) = max over months of v'(i, m) / v(i, m)
 * </pre>
 *
 * <p>s part of what is mended in the water of the zone, l its water by the likely amount: water
 * that goes is never more than the zone has. Where panes are wet the air gains less in winter than
 * in summer; the month in which it gains least stands for all, which errs towards damp.
 */
public final class RepairedZones implements HomeStates.Repairs {
  private final HomeZones zones;
  private final double[][] glass;
  private final VapourChanges make;
  private final List<Studied> repairs;
  private final List<VapourChange> changes;
  private final double[] likely;

  private RepairedZones(
      Assessment today, OptionsBasis basis, HomeZones zones, List<Studied> repairs) {
    this.zones = zones;
    this.repairs = List.copyOf(repairs);
    FabricStates fabric = new FabricStates(today, zones, List.of(), basis.tables());
    fabric.side(0);
    this.glass = fabric.glass().get(0);
    this.make =
        new VapourChanges(
            zones, today.moisture().items(), new EffectStudy(today, basis).production());
    this.changes = repairs.stream().map(make::of).toList();
    this.likely = ratios(zones.home(), change(Range::likely));
  }

  /**
   * For a home as it is.
   *
   * @param today what its survey means
   * @param basis how its surfaces are judged
   * @param repairs what is put in order, with what each does by itself
   * @return empty where no outdoor air is known of
   */
  public static Optional<RepairedZones> of(
      Assessment today, OptionsBasis basis, List<Studied> repairs) {
    return HomeZones.of(today).map(zones -> new RepairedZones(today, basis, zones, repairs));
  }

  /** By what the vapour excess of a room is multiplied [1]; low where the repairs do most. */
  public Range ratio(String room) {
    int zone = zones.zoneOf(room);
    double most = ratios(zones.home(), change(Range::high))[zone];
    double least = ratios(zones.home(), change(Range::low))[zone];
    return new Range(
        Math.min(likely[zone], Math.min(most, least)),
        likely[zone],
        Math.max(likely[zone], Math.max(most, least)));
  }

  /** The home at its likely values with all done. */
  public ZonedHome likely() {
    return after(zones.home(), change(Range::likely));
  }

  @Override
  public List<Optional<String>> names() {
    return repairs.stream()
        .map(r -> ends(r) ? Optional.of(water(r)) : Optional.<String>empty())
        .toList();
  }

  @Override
  public Optional<Boolean> isDoubtful(String fan) {
    return repairs.stream()
        .filter(r -> r.replaced().stream().anyMatch(f -> f.fan().id().equals(fan)))
        .map(r -> flow(r).isSpread())
        .findFirst();
  }

  @Override
  public HomeState after(HomeState today, double[] z) {
    VapourChange all = new VapourChange(zones.size());
    Map<String, Double> fans = new HashMap<>(today.fans());
    for (int i = 0; i < repairs.size(); i++) {
      Studied repair = repairs.get(i);
      double flow = times(flow(repair), TwoPieceNormal.at(flow(repair), z[i]));
      double water = times(repair.water(), TwoPieceNormal.at(repair.water(), z[i]));
      add(all, i, flow, water);
      for (FanFlow gone : repair.replaced()) {
        all.lose(make.without(gone), today.fan(gone.fan().id()));
        fans.put(gone.fan().id(), flow);
      }
    }
    double[] ratios = ratios(today.zones(), all);
    List<Double> excess =
        IntStream.range(0, ratios.length)
            .mapToObj(i -> likely[i] > 0 ? today.excess().get(i) * ratios[i] / likely[i] : 1)
            .toList();
    return new HomeState(
        after(today.zones(), all),
        today.leaks(),
        fans,
        today.water(),
        today.doors(),
        today.glass(),
        today.moment(),
        today.hygrometer(),
        today.outdoors(),
        excess);
  }

  /** All repairs at one end of what each does; what goes with a fan is likely. */
  private VapourChange change(Function<Range, Double> end) {
    VapourChange all = new VapourChange(zones.size());
    for (int i = 0; i < repairs.size(); i++) {
      Studied repair = repairs.get(i);
      add(
          all,
          i,
          times(flow(repair), end.apply(flow(repair))),
          times(repair.water(), end.apply(repair.water())));
      repair.replaced().forEach(gone -> all.lose(make.without(gone), 1));
    }
    return all;
  }

  private void add(VapourChange all, int repair, double flow, double water) {
    VapourChange one = changes.get(repair);
    boolean ends = ends(repairs.get(repair));
    all.bring(one, flow, ends ? 0 : water);
    for (int i = 0; ends && i < all.waterLeft.length; i++) {
      all.waterLeft[i] *= left(1 - one.waterLeft[i], water);
    }
  }

  /**
   * What is left of the water of a zone.
   *
   * @param part the part of a source in it at its likely amount [1]
   * @param times its amount by the likely one [1]; a source that is drawn as none takes nothing
   *     with it, though by its likely amount it were all that the zone has
   */
  private static double left(double part, double times) {
    return part > 0 && times > 0 ? (1 - part) / (1 - part + part * times) : 1;
  }

  private static String water(Studied repair) {
    return "water given off by the "
        + String.join(", ", repair.candidate().measure().moisture().orElseThrow().sources())
        + repair.candidate().room().map(r -> ", " + r.name()).orElse("");
  }

  /** True for what ends a source; a fan takes a share of what is given off. */
  private static boolean ends(Studied repair) {
    return repair.candidate().measure().air().isEmpty();
  }

  private static Range flow(Studied repair) {
    return repair.running().map(r -> r.flow().times(r.shareOfDay())).orElse(Range.exactly(0));
  }

  private static double times(Range range, double value) {
    return range.likely() > 0 ? Math.max(0, value) / range.likely() : 1;
  }

  private double[] ratios(ZonedHome home, VapourChange change) {
    double[][] months = new VapourModel(home, glass).ratios(change, glass);
    double[] worst = new double[zones.size()];
    for (double[] month : months) {
      for (int i = 0; i < worst.length; i++) {
        worst[i] = Math.max(worst[i], month[i]);
      }
    }
    return worst;
  }

  private static ZonedHome after(ZonedHome home, VapourChange change) {
    List<ZonedHome.Zone> after = new ArrayList<>();
    for (int i = 0; i < home.zones().size(); i++) {
      ZonedHome.Zone zone = home.zones().get(i);
      after.add(
          new ZonedHome.Zone(
              zone.room(),
              Math.max(0, zone.supplyM3S() - change.supplyGone[i]) + change.supply[i],
              Math.max(0, zone.extractM3S() - change.extractGone[i]) + change.extract[i],
              zone.shareOfLeaksIn(),
              zone.shareOfLeaksOut(),
              zone.waterKgS() * change.waterLeft[i]));
    }
    double in = sum(after, ZonedHome.Zone::supplyM3S);
    double out = sum(after, ZonedHome.Zone::extractM3S);
    double added =
        CombinedFlow.totalM3S(in, out, home.leaksM3S())
            - CombinedFlow.totalM3S(
                sum(home.zones(), ZonedHome.Zone::supplyM3S),
                sum(home.zones(), ZonedHome.Zone::extractM3S),
                home.leaksM3S());
    return new ZonedHome(
        after,
        home.ways(),
        home.panes(),
        Math.max(Math.max(in, out), home.outdoorAirM3S() + added),
        home.leaksM3S(),
        home.hub(),
        home.celsius());
  }

  private static double sum(List<ZonedHome.Zone> zones, ToDoubleFunction<ZonedHome.Zone> of) {
    return zones.stream().mapToDouble(of).sum();
  }
}
