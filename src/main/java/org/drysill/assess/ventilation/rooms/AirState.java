package org.drysill.assess.ventilation.rooms;

import java.util.List;
import java.util.stream.DoubleStream;
import org.drysill.physics.network.AirNetwork;
import org.drysill.physics.network.Pressures;

/**
 * The home in balance under one weather.
 *
 * @param network rooms, paths and fans
 * @param pressures the pressures at which every room is in balance
 * @param supply outdoor air blown into each place [m³/s]
 * @param extract air taken out of each place [m³/s]
 * @param weatherPa pressure of the weather [Pa]
 */
record AirState(
    AirNetwork network,
    Pressures pressures,
    List<Double> supply,
    List<Double> extract,
    double weatherPa) {
  /** Copies the lists. */
  AirState {
    supply = List.copyOf(supply);
    extract = List.copyOf(extract);
  }

  /** Outdoor air that comes in through the leaks of a place [m³/s]. */
  double leaksIn(int place) {
    return leaks(place).map(q -> Math.max(q, 0)).sum();
  }

  /** Indoor air that goes out through the leaks of a place [m³/s]. */
  double leaksOut(int place) {
    return leaks(place).map(q -> Math.max(-q, 0)).sum();
  }

  private DoubleStream leaks(int place) {
    return network.outside().stream()
        .filter(way -> way.room() == place)
        .mapToDouble(way -> way.flowM3S(pressures));
  }

  /** All outdoor air that comes in [m³/s]. */
  double outdoorAir() {
    double leaking =
        network.outside().stream().mapToDouble(way -> Math.max(0, way.flowM3S(pressures))).sum();
    return supply.stream().mapToDouble(Double::doubleValue).sum() + leaking;
  }
}
