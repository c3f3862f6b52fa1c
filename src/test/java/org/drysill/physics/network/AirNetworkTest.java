package org.drysill.physics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drysill.physics.flow.LeakagePowerLaw;
import org.drysill.physics.flow.Orifice;
import org.drysill.physics.network.AirNetwork.Between;
import org.drysill.physics.network.AirNetwork.Outside;
import org.junit.jupiter.api.Test;

/** Networks whose answer can be worked out by hand. */
class AirNetworkTest {
  private static final AirPath CRACK = new AirPath(0.001, 0.5);
  private static final AirPath DOOR = new AirPath(0.002, 0.5);

  @Test
  void aPathFollowsItsLawFarAboveTheSmoothedPart() {
    assertThat(new AirPath(0.002, 0.65).flowM3S(4))
        .isCloseTo(0.002 * Math.pow(4, 0.65), within(1e-9));
    assertThat(new AirPath(0.002, 0.65).flowM3S(-4))
        .isCloseTo(-0.002 * Math.pow(4, 0.65), within(1e-9));
    assertThat(CRACK.flowM3S(0)).isZero();
  }

  @Test
  void pathsAreMadeOfLeaksAndOfOpenings() {
    LeakagePowerLaw law = LeakagePowerLaw.through(0.3, 50, 0.65);
    assertThat(AirPath.of(law, 0.25).flowM3S(50)).isCloseTo(0.075, within(1e-9));
    Orifice gap = new Orifice(0.61, 0.0076);
    assertThat(AirPath.of(gap, 1.2).flowM3S(10)).isCloseTo(gap.flowM3S(10, 1.2), within(1e-9));
  }

  @Test
  void oneRoomDrawsThroughItsCrackWhatItsFanTakesOut() {
    Pressures pressures =
        new AirNetwork(List.of(-0.005), List.of(), List.of(new Outside(0, CRACK, 0))).balanced();
    // (q / C)² = 25 Pa below the outside.
    assertThat(pressures.pa(0)).isCloseTo(-25, within(1e-4));
  }

  @Test
  void aRoomBehindADoorDrawsItsAirThroughIt() {
    AirNetwork network =
        new AirNetwork(
            List.of(0.0, -0.004),
            List.of(new Between(0, 1, DOOR)),
            List.of(new Outside(0, CRACK, 0)));
    Pressures pressures = network.balanced();
    // (4 / 1)² = 16 Pa at the crack and (4 / 2)² = 4 Pa more at the door.
    assertThat(pressures.pa(0)).isCloseTo(-16, within(1e-4));
    assertThat(pressures.pa(1)).isCloseTo(-20, within(1e-4));
    assertThat(network.between().get(0).flowM3S(pressures)).isCloseTo(0.004, within(1e-12));
    assertThat(network.outside().get(0).flowM3S(pressures)).isCloseTo(0.004, within(1e-12));
  }

  @Test
  void airPassesThroughARoomFromWindwardToLeeward() {
    AirNetwork network =
        new AirNetwork(
            List.of(0.0), List.of(), List.of(new Outside(0, CRACK, 4), new Outside(0, CRACK, -4)));
    Pressures pressures = network.balanced();
    assertThat(pressures.pa(0)).isCloseTo(0, within(1e-9));
    assertThat(network.outside().get(0).flowM3S(pressures)).isCloseTo(0.002, within(1e-9));
  }

  @Test
  void aStrongFanInATightRoomIsFoundTooThoughTheFirstStepGoesFarTooFar() {
    AirNetwork network =
        new AirNetwork(
            List.of(0.1, -0.1, 0.0),
            List.of(new Between(0, 1, new AirPath(1, 0.5)), new Between(1, 2, DOOR)),
            List.of(new Outside(0, CRACK, 2), new Outside(2, new AirPath(1e-6, 0.65), -2)));
    Pressures pressures = network.balanced();
    double through = network.between().get(0).flowM3S(pressures);
    assertThat(0.1 + network.outside().get(0).flowM3S(pressures)).isCloseTo(through, within(1e-12));
  }

  @Test
  void aRoomWithoutAnyWayOutsideIsRefused() {
    List<Outside> outside = List.of(new Outside(0, CRACK, 0));
    List<Between> shut = List.of(new Between(0, 1, new AirPath(0, 0.5)));
    assertThatThrownBy(() -> new AirNetwork(List.of(0.0, 0.0), shut, outside))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no way from room 1 to the outside");
    assertThatThrownBy(
            () ->
                new AirNetwork(
                    List.of(0.0), List.of(), List.of(new Outside(0, new AirPath(0, 0.5), 0))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
