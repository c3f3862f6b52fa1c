package org.drysill.physics.zones;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The quick recurrence against {@link ZoneSteps}, in drawn homes through drawn nights. */
class ExcessStepsTest {
  private static final int HOURS = 6000;
  private static final int MANY = 12;

  private static double[] steady(Homes home) {
    ZoneVapour steady =
        new SteadyZones(home.flows(), List.of()).at(home.production, 0, new double[0]);
    double[] contents = new double[home.zones];
    for (int i = 0; i < contents.length; i++) {
      contents[i] = steady.content(i);
    }
    return contents;
  }

  private static ExcessSteps quick(Homes home) {
    return new ExcessSteps(home.flows(), home.stores, home.panes, home.production, 3600, MANY);
  }

  private static ZoneSteps plain(Homes home) {
    ZoneSteps plain = new ZoneSteps(List.of(home.flows()), home.stores, home.panes, 3600);
    plain.start(steady(home));
    return plain;
  }

  /** Panes that bear now less than the rooms hold and now more, each in its own rhythm. */
  private static double[][] nights(Homes home, double[] most) {
    Random random = new Random(home.zones);
    double[][] saturation = new double[home.panes.size()][HOURS];
    for (int p = 0; p < saturation.length; p++) {
      double of = most[home.panes.get(p).zone()];
      double base = 0.3 + random.nextDouble();
      for (int h = 0; h < HOURS; h++) {
        saturation[p][h] =
            Math.max(0, of * (base + 0.5 * Math.sin(h / 3.8 + p) + 0.3 * random.nextDouble()));
      }
    }
    return saturation;
  }

  private static void same(ExcessSteps quick, ZoneSteps plain, double within) {
    for (int i = 0; i < quick.zones(); i++) {
      assertThat(quick.content(i)).isCloseTo(plain.content(i), within(within * quick.most(i)));
      assertThat(quick.content(i)).isLessThanOrEqualTo(quick.most(i));
    }
  }

  @Test
  void steps_as_the_plain_zones_do() {
    int wet = 0;
    for (long seed = 0; seed < 40; seed++) {
      Homes home = new Homes(seed);
      ExcessSteps quick = quick(home);
      ZoneSteps plain = plain(home);
      double[] most = steady(home);
      double[][] saturation = nights(home, most);
      double[] now = new double[home.panes.size()];
      for (int h = 0; h < HOURS; h++) {
        for (int p = 0; p < now.length; p++) {
          now[p] = saturation[p][h];
        }
        plain.step(0, home.production, 0, now);
        quick.step(now, 0);
        same(quick, plain, 1e-11);
        for (int p = 0; p < now.length; p++) {
          wet += plain.settling(p) > 0 ? 1 : 0;
        }
      }
    }
    assertThat(wet).isGreaterThan(10_000);
  }

  @Test
  void dry_steps_one_by_one_or_many_at_once_are_the_same() {
    int taken = 0;
    for (long seed = 0; seed < 40; seed++) {
      Homes home = new Homes(seed);
      ExcessSteps quick = quick(home);
      ExcessSteps skipping = quick(home);
      ZoneSteps plain = plain(home);
      double[] never = new double[home.panes.size()];
      Arrays.fill(never, Double.MAX_VALUE);
      double[] wet = new double[home.panes.size()];
      for (int h = 0; h < 24; h++) {
        plain.step(0, home.production, 0, new double[never.length]);
        quick.step(wet, 0);
        skipping.step(wet, 0);
      }
      taken += quick.isSteady() ? 0 : 1;
      for (int h = 0; h < 50 * MANY; h++) {
        plain.step(0, home.production, 0, never);
        quick.step();
        if (h % MANY == MANY - 1) {
          skipping.skip();
          same(quick, plain, 1e-11);
          same(skipping, plain, 1e-11);
        }
      }
    }
    assertThat(taken).isBetween(20, 39);
  }

  @Test
  void what_panes_took_fades_altogether() {
    Homes home = new Homes(3);
    ExcessSteps quick = quick(home);
    quick.step(new double[home.panes.size()], 0);
    assertThat(home.panes).isNotEmpty();
    assertThat(quick.isSteady()).isFalse();
    for (int block = 0; block < 2000; block++) {
      quick.skip();
    }
    assertThat(quick.isSteady()).isTrue();
    assertThat(quick.content(0)).isEqualTo(quick.most(0));
  }

  @Test
  void refuses_what_is_no_home() {
    Homes home = new Homes(3);
    assertThatThrownBy(
            () ->
                new ExcessSteps(
                    home.flows(),
                    home.stores,
                    List.of(new Pane(home.zones, 0.01)),
                    home.production,
                    3600,
                    MANY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("zone of a pane");
    assertThatThrownBy(
            () -> new ExcessSteps(home.flows(), home.stores, home.panes, new double[0], 3600, MANY))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
