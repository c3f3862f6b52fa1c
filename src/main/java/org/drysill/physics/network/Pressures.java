package org.drysill.physics.network;

import java.util.List;

/**
 * The pressures of the rooms of a network.
 *
 * @param all pressure of each room above that of still air outside [Pa]
 */
public record Pressures(List<Double> all) {
  /** Copies the list. */
  public Pressures {
    all = List.copyOf(all);
  }

  /** The pressure of a room [Pa]. */
  public double pa(int room) {
    return all.get(room);
  }
}
