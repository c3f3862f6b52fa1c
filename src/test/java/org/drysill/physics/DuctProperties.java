package org.drysill.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.drysill.physics.flow.DuctSystem;
import org.drysill.physics.flow.FanCurve;
import org.drysill.physics.flow.FanCurve.Point;
import org.drysill.physics.flow.RoundDuct;
import org.drysill.physics.flow.RoundDuct.Air;

/** What must hold of a fan with a duct whatever the numbers. */
class DuctProperties {
  private static final FanCurve FAN =
      new FanCurve(
          List.of(new Point(0, 60), new Point(0.01, 50), new Point(0.02, 20), new Point(0.03, 0)));

  private static double flow(double diameter, double length, double slackness, double k) {
    return system(diameter, length, slackness, k).flowM3S(FAN, Air.ROOM);
  }

  private static DuctSystem system(double diameter, double length, double slackness, double k) {
    return new DuctSystem(new RoundDuct(diameter, 0.0009), length, slackness, k, k);
  }

  @Property
  void a_longer_narrower_slacker_or_rougher_way_never_gives_more_air(
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.3) double diameter,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double length,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 10) double slackness,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double k,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 2) double more) {
    double now = flow(diameter, length, slackness, k) + 1e-15;
    assertThat(flow(diameter, length * more, slackness, k)).isLessThanOrEqualTo(now);
    assertThat(flow(diameter, length, slackness * more, k)).isLessThanOrEqualTo(now);
    assertThat(flow(diameter, length, slackness, k * more)).isLessThanOrEqualTo(now);
    assertThat(flow(diameter * more, length, slackness, k))
        .isGreaterThanOrEqualTo(flow(diameter, length, slackness, k) - 1e-15);
  }

  @Property
  void the_fan_drives_what_the_duct_takes_up(
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.2) double diameter,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 20) double length,
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20) double k) {
    DuctSystem duct = system(diameter, length, 1, k);
    double flow = duct.flowM3S(FAN, Air.ROOM);
    double step = 1e-9;
    assertThat(duct.lossPa(flow, Air.ROOM)).isLessThanOrEqualTo(FAN.pressurePa(flow));
    assertThat(duct.lossPa(flow + step, Air.ROOM) + 1e-9)
        .isGreaterThan(FAN.pressurePa(Math.min(flow + step, FAN.mostM3S())));
    assertThat(duct.lossPa(flow, Air.ROOM))
        .isCloseTo(
            duct.frictionPa(flow, Air.ROOM)
                + duct.bendsPa(flow, Air.ROOM)
                + duct.endsPa(flow, Air.ROOM),
            within(1e-12));
  }

  @Property
  void without_losses_a_fan_gives_its_free_flow(
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.3) double diameter) {
    assertThat(flow(diameter, 0, 1, 0)).isEqualTo(FAN.mostM3S());
  }
}
