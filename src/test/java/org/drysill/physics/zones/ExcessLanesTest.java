package org.drysill.physics.zones;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Homes side by side against {@link ZoneSteps} one by one, in drawn homes through drawn nights. */
class ExcessLanesTest {
  private static final int HOURS = 1500;
  private static final int MANY = 12;

  /** By what homes side by side differ. */
  private static final double[] TIMES = {1, 0.3, 0.6, 0.9, 1.1, 1.4, 1.9, 2.6, 0};

  private static Homes home(long seed) {
    Homes home = new Homes(seed);
    if (seed % 2 == 1) {
      home.loops(new Random(seed));
    }
    return home;
  }

  private static List<LaneHome> homes(Homes home) {
    return Arrays.stream(TIMES).mapToObj(home::lane).toList();
  }

  private static ExcessLanes lanes(Homes home, List<LaneHome> lanes) {
    return new ExcessLanes(lanes, home.stores, 3600, MANY);
  }

  private static double[] steady(LaneHome lane) {
    ZoneVapour steady =
        new SteadyZones(lane.flows, List.of()).at(lane.production, 0, new double[0]);
    double[] contents = new double[lane.production.length];
    Arrays.setAll(contents, steady::content);
    return contents;
  }

  private static List<ZoneSteps> plain(Homes home, List<LaneHome> lanes) {
    return lanes.stream()
        .map(
            lane -> {
              ZoneSteps plain = new ZoneSteps(List.of(lane.flows), home.stores, lane.panes, 3600);
              plain.start(steady(lane));
              return plain;
            })
        .toList();
  }

  /** Panes that bear now less than the rooms hold and now more, each in its own rhythm. */
  private static double[][] nights(Homes home) {
    double[] most = steady(home.lane(1));
    Random random = new Random(home.zones);
    double[][] saturation = new double[HOURS][home.panes.size()];
    for (int p = 0; p < home.panes.size(); p++) {
      double of = most[home.panes.get(p).zone()];
      double base = 0.3 + random.nextDouble();
      for (int h = 0; h < HOURS; h++) {
        saturation[h][p] =
            Math.max(0, of * (base + 0.5 * Math.sin(h / 3.8 + p) + 0.3 * random.nextDouble()));
      }
    }
    return saturation;
  }

  private static double[] contents(ExcessLanes lanes, int zone) {
    double[] contents = new double[lanes.lanes()];
    lanes.contents(zone, contents);
    return contents;
  }

  private static void same(ExcessLanes lanes, List<ZoneSteps> plain) {
    for (int i = 0; i < lanes.zones(); i++) {
      double[] contents = contents(lanes, i);
      for (int l = 0; l < contents.length; l++) {
        double most = lanes.most(i, l);
        assertThat(contents[l]).isCloseTo(plain.get(l).content(i), within(1e-11 * most));
        assertThat(contents[l]).isLessThanOrEqualTo(most);
      }
    }
  }

  @Test
  void step_as_the_plain_zones_do() {
    int wet = 0;
    int dry = 0;
    for (long seed = 0; seed < 40; seed++) {
      Homes home = home(seed);
      List<LaneHome> homes = homes(home);
      ExcessLanes lanes = lanes(home, homes);
      List<ZoneSteps> plain = plain(home, homes);
      for (double[] now : nights(home)) {
        lanes.step(now, 0);
        for (int l = 0; l < TIMES.length; l++) {
          plain.get(l).step(0, homes.get(l).production, 0, now);
          for (int p = 0; p < now.length; p++) {
            wet += plain.get(l).settling(p) > 0 ? 1 : 0;
            dry += plain.get(l).settling(p) > 0 ? 0 : 1;
          }
        }
        same(lanes, plain);
      }
    }
    assertThat(wet).isGreaterThan(100_000);
    assertThat(dry).isGreaterThan(100_000);
  }

  @Test
  void a_home_is_the_same_to_the_last_digit_whatever_stands_beside_it() {
    for (long seed = 0; seed < 40; seed++) {
      Homes home = home(seed);
      List<LaneHome> homes = homes(home);
      ExcessLanes together = lanes(home, homes);
      List<ExcessLanes> alone = homes.stream().map(l -> lanes(home, List.of(l))).toList();
      for (double[] now : nights(home)) {
        together.step(now, 0);
        alone.forEach(a -> a.step(now, 0));
      }
      for (int i = 0; i < home.zones; i++) {
        int zone = i;
        assertThat(contents(together, zone))
            .isEqualTo(alone.stream().mapToDouble(a -> contents(a, zone)[0]).toArray());
      }
    }
  }

  @Test
  void dry_steps_one_by_one_or_many_at_once_are_the_same() {
    int taken = 0;
    for (long seed = 0; seed < 40; seed++) {
      Homes home = home(seed);
      List<LaneHome> homes = homes(home);
      ExcessLanes lanes = lanes(home, homes);
      ExcessLanes skipping = lanes(home, homes);
      List<ZoneSteps> plain = plain(home, homes);
      double[] wet = new double[home.panes.size()];
      double[] never = new double[wet.length];
      Arrays.fill(never, Double.MAX_VALUE);
      for (int h = 0; h < 24; h++) {
        lanes.step(wet, 0);
        skipping.step(wet, 0);
        step(plain, homes, wet);
      }
      taken += lanes.isSteady() ? 0 : 1;
      for (int h = 0; h < 50 * MANY; h++) {
        lanes.step();
        step(plain, homes, never);
        if (h % MANY == MANY - 1) {
          skipping.skip();
          same(lanes, plain);
          same(skipping, plain);
        }
      }
    }
    assertThat(taken).isBetween(20, 39);
  }

  private static void step(List<ZoneSteps> plain, List<LaneHome> homes, double[] bears) {
    for (int l = 0; l < homes.size(); l++) {
      plain.get(l).step(0, homes.get(l).production, 0, bears);
    }
  }

  @Test
  void what_panes_took_fades_altogether_and_begins_anew() {
    Homes home = home(3);
    ExcessLanes lanes = lanes(home, homes(home));
    double[] bears = new double[home.panes.size()];
    lanes.step(bears, 0);
    double[] first = contents(lanes, 0);
    assertThat(home.panes).isNotEmpty();
    assertThat(lanes.isSteady()).isFalse();
    for (int block = 0; block < 2000; block++) {
      lanes.skip();
    }
    assertThat(lanes.isSteady()).isTrue();
    assertThat(contents(lanes, 0)[0]).isEqualTo(lanes.most(0, 0));
    lanes.step(bears, 0);
    assertThat(contents(lanes, 0)).isEqualTo(first);
    lanes.restart();
    assertThat(lanes.isSteady()).isTrue();
  }

  @Test
  void tells_the_most_that_any_home_holds_at_a_pane() {
    Homes home = home(3);
    ExcessLanes lanes = lanes(home, homes(home));
    assertThat(lanes.panes()).isEqualTo(home.panes.size());
    int zone = home.panes.get(0).zone();
    assertThat(lanes.mostAtPane(0))
        .isEqualTo(
            IntStream.range(0, TIMES.length).mapToDouble(l -> lanes.most(zone, l)).max().orElse(0));
  }

  @Test
  void refuses_what_is_no_home() {
    Homes home = home(3);
    assertThatThrownBy(
            () -> new LaneHome(home.flows(), List.of(new Pane(home.zones, 0.01)), home.production))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("zone of a pane");
    assertThatThrownBy(() -> new LaneHome(home.flows(), home.panes, new double[0]))
        .isInstanceOf(IllegalArgumentException.class);
    List<LaneHome> homes = homes(home);
    assertThatThrownBy(() -> new ExcessLanes(homes, new double[0], 3600, MANY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("zones with a store");
  }
}
