package org.drysill.physics.zones;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What holds for vapour in any home: homes of one to eight rooms with fans, doors and panes. */
class ZoneProperties {
  @Property
  void a_steady_state_conserves_water(@ForAll long seed) {
    Homes home = new Homes(seed);
    ZoneFlows flows = home.flows();
    ZoneVapour vapour = home.steady();
    double coming = Arrays.stream(home.production).sum() + flows.outdoorAir() * Homes.OUTDOOR;
    double going = 0;
    for (int i = 0; i < home.zones; i++) {
      going += flows.out(i) * vapour.content(i);
    }
    for (int p = 0; p < home.panes.size(); p++) {
      going += vapour.settling(p);
    }
    assertThat(going).isCloseTo(coming, within(1e-9 * coming));
  }

  @Property
  void every_step_conserves_water(@ForAll long seed) {
    Homes home = new Homes(seed);
    ZoneFlows flows = home.flows();
    double step = 3600;
    ZoneSteps steps = new ZoneSteps(List.of(flows), home.stores, home.panes, step);
    double[] start = new double[home.zones];
    Arrays.fill(start, 0.011);
    steps.start(start);
    for (int hour = 0; hour < 30; hour++) {
      double before = stored(home, steps);
      double outdoor = 0.004 + 0.003 * Math.sin(hour);
      steps.step(0, home.production, outdoor, home.saturation);
      double net = Arrays.stream(home.production).sum() + flows.outdoorAir() * outdoor;
      for (int i = 0; i < home.zones; i++) {
        net -= flows.out(i) * steps.content(i);
      }
      for (int p = 0; p < home.panes.size(); p++) {
        net -= steps.settling(p);
      }
      assertThat(stored(home, steps) - before).isCloseTo(net * step, within(1e-9 * before));
    }
  }

  private static double stored(Homes home, ZoneSteps steps) {
    double sum = 0;
    for (int i = 0; i < home.zones; i++) {
      sum += home.stores[i] * steps.content(i);
    }
    return sum;
  }

  @Property
  void vapour_and_condensate_are_never_negative(@ForAll long seed) {
    Homes home = new Homes(seed);
    ZoneVapour vapour = home.steady();
    for (int i = 0; i < home.zones; i++) {
      assertThat(vapour.content(i)).isGreaterThanOrEqualTo(0);
    }
    for (int p = 0; p < home.panes.size(); p++) {
      double content = vapour.content(home.panes.get(p).zone());
      double expected = home.panes.get(p).transferM3S() * Math.max(0, content - home.saturation[p]);
      assertThat(vapour.settling(p)).isEqualTo(expected);
    }
  }

  @Property
  void a_dry_home_stays_as_wet_as_the_air_outdoors(@ForAll long seed) {
    Homes home = new Homes(seed);
    ZoneVapour vapour =
        new SteadyZones(home.flows(), List.of())
            .at(new double[home.zones], Homes.OUTDOOR, new double[0]);
    for (int i = 0; i < home.zones; i++) {
      assertThat(vapour.content(i)).isCloseTo(Homes.OUTDOOR, within(1e-9 * Homes.OUTDOOR));
    }
  }

  @Property
  void more_production_never_means_less_vapour_anywhere(
      @ForAll long seed, @ForAll @IntRange(max = 7) int where) {
    Homes home = new Homes(seed);
    ZoneVapour before = home.steady();
    home.production[where % home.zones] += 2e-5;
    assertNowhereBelow(home.steady(), before, home.zones);
  }

  @Property
  void fresh_air_in_any_room_never_means_more_vapour_in_winter(
      @ForAll long seed, @ForAll @IntRange(max = 7) int where) {
    Homes home = new Homes(seed);
    ZoneVapour before = home.steady();
    home.supply[where % home.zones] += 0.005;
    home.extract[where % home.zones] += 0.005;
    assertNowhereBelow(before, home.steady(), home.zones);
  }

  /** With the air made up through the rooms beside it, all drier than the wettest one. */
  @Property
  void extract_from_the_wettest_room_never_means_more_vapour_in_winter(@ForAll long seed) {
    Homes home = new Homes(seed);
    ZoneFlows flows = home.flows();
    ZoneVapour before = home.steady();
    int wettest = 0;
    for (int i = 1; i < home.zones; i++) {
      wettest = before.content(i) > before.content(wettest) ? i : wettest;
    }
    int other = (wettest + 1) % home.zones;
    double[][] between = new double[home.zones][home.zones];
    double[] in = new double[home.zones];
    double[] out = new double[home.zones];
    for (int i = 0; i < home.zones; i++) {
      in[i] = flows.in(i);
      out[i] = flows.out(i);
      for (int j = 0; j < home.zones; j++) {
        between[i][j] = flows.between(i, j);
      }
    }
    in[other] += 0.006;
    out[wettest] += 0.006;
    if (other != wettest) {
      between[other][wettest] += 0.006;
    }
    ZoneVapour after =
        new SteadyZones(new ZoneFlows(between, in, out), home.panes)
            .at(home.production, Homes.OUTDOOR, home.saturation);
    assertNowhereBelow(before, after, home.zones);
  }

  @Property
  void another_pane_never_means_more_vapour(
      @ForAll long seed,
      @ForAll @Scale(6) @DoubleRange(min = 0.003, max = 0.01) double saturation) {
    Homes home = new Homes(seed);
    ZoneVapour before = home.steady();
    List<Pane> more = Stream.concat(home.panes.stream(), Stream.of(new Pane(0, 0.004))).toList();
    double[] all = Arrays.copyOf(home.saturation, more.size());
    all[more.size() - 1] = saturation;
    ZoneVapour after = new SteadyZones(home.flows(), more).at(home.production, Homes.OUTDOOR, all);
    assertNowhereBelow(before, after, home.zones);
  }

  @Property(tries = 200)
  void the_steady_state_is_where_steps_end(@ForAll long seed) {
    Homes home = new Homes(seed);
    ZoneVapour steady = home.steady();
    ZoneSteps steps = new ZoneSteps(List.of(home.flows()), home.stores, home.panes, 1e6);
    for (int i = 0; i < 400; i++) {
      steps.step(0, home.production, Homes.OUTDOOR, home.saturation);
    }
    for (int i = 0; i < home.zones; i++) {
      assertThat(steps.content(i)).isCloseTo(steady.content(i), within(1e-9 * steady.content(i)));
    }
  }

  /** Contents in g/m³, production in g/h and flows in m³/h give the same vapour. */
  @Property
  void units_do_not_matter(@ForAll long seed) {
    Homes home = new Homes(seed);
    ZoneVapour kilograms = home.steady();
    List<Pane> panes =
        home.panes.stream().map(p -> new Pane(p.zone(), p.transferM3S() * 3600)).toList();
    ZoneVapour grams =
        new SteadyZones(perHour(home.flows()), panes)
            .at(
                Arrays.stream(home.production).map(g -> 1000 * 3600 * g).toArray(),
                1000 * Homes.OUTDOOR,
                Arrays.stream(home.saturation).map(v -> 1000 * v).toArray());
    for (int i = 0; i < home.zones; i++) {
      double content = kilograms.content(i);
      assertThat(grams.content(i) / 1000).isCloseTo(content, within(1e-9 * content));
    }
  }

  private static ZoneFlows perHour(ZoneFlows flows) {
    int zones = flows.zones();
    double[][] between = new double[zones][zones];
    double[] in = new double[zones];
    double[] out = new double[zones];
    for (int i = 0; i < zones; i++) {
      in[i] = flows.in(i) * 3600;
      out[i] = flows.out(i) * 3600;
      for (int j = 0; j < zones; j++) {
        between[i][j] = flows.between(i, j) * 3600;
      }
    }
    return new ZoneFlows(between, in, out);
  }

  private static void assertNowhereBelow(ZoneVapour upper, ZoneVapour lower, int zones) {
    for (int i = 0; i < zones; i++) {
      assertThat(upper.content(i))
          .isGreaterThanOrEqualTo(lower.content(i) - 1e-9 * lower.content(i));
    }
  }
}
