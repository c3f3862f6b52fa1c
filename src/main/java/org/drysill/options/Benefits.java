package org.drysill.options;

import java.util.List;

/**
 * What a measure is good for besides money; listed, never given a price.
 *
 * @param comfort comfort
 * @param health health
 * @param fabric the building
 */
public record Benefits(List<String> comfort, List<String> health, List<String> fabric) {
  /** Copies the lists. */
  public Benefits {
    comfort = List.copyOf(comfort);
    health = List.copyOf(health);
    fabric = List.copyOf(fabric);
  }
}
