package org.drysill.assess.elements;

import java.util.List;

/**
 * A place within a wall at which water settles.
 *
 * @param where in words, such as {@code between the mineral wool and the brick}
 * @param absorbed true where both sides take up water
 * @param storedKgM2 water there at the end of each month of the year, in its order [kg/m²]
 */
public record WetPlace(String where, boolean absorbed, List<Double> storedKgM2) {
  /** Copies the list. */
  public WetPlace {
    storedKgM2 = List.copyOf(storedKgM2);
  }

  /** The most water there at the end of a month [kg/m²]. */
  public double highestKgM2() {
    return storedKgM2.stream().mapToDouble(s -> s).max().orElse(0);
  }
}
