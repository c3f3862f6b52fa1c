package org.drysill.physics.network;

import java.util.List;

/**
 * Rooms as nodes of one pressure each, joined to each other and to the outside by paths, with air
 * blown in or taken out at given rates; a network of mass flows at one density.
 *
 * <p>For every room the fan flow and the flows of its paths sum up to zero. As no path's flow falls
 * when its pressure difference grows, and every room reaches the outside, the pressures that do so
 * exist and are the only ones.
 *
 * @param supplyM3S air that fans blow into each room less what they take out [m³/s]
 * @param between paths between rooms
 * @param outside paths to the outside
 */
public record AirNetwork(List<Double> supplyM3S, List<Between> between, List<Outside> outside) {
  /**
   * A path between two rooms.
   *
   * @param from index of a room
   * @param to index of another room; the flow counts positive towards it
   * @param path the gap
   */
  public record Between(int from, int to, AirPath path) {
    /** Flow from the first room to the other [m³/s]. */
    public double flowM3S(Pressures pressures) {
      return path.flowM3S(pressures.pa(from) - pressures.pa(to));
    }
  }

  /**
   * A path between a room and a place outside.
   *
   * @param room index of the room
   * @param path the crack
   * @param outsidePa pressure of the air at its outer end [Pa]
   */
  public record Outside(int room, AirPath path, double outsidePa) {
    /** Flow into the room [m³/s]; negative out of it. */
    public double flowM3S(Pressures pressures) {
      return path.flowM3S(outsidePa - pressures.pa(room));
    }
  }

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException where a room has no way to the outside, so that nothing sets
   *     its pressure
   */
  public AirNetwork {
    supplyM3S = List.copyOf(supplyM3S);
    between = List.copyOf(between);
    outside = List.copyOf(outside);
    Reach.check(supplyM3S.size(), between, outside);
  }

  /** The pressures at which every room is in balance. */
  public Pressures balanced() {
    return new NewtonBalance(this).solve();
  }
}
