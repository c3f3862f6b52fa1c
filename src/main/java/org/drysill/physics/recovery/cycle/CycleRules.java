package org.drysill.physics.recovery.cycle;

import org.drysill.physics.Bounds;

/**
 * What a log must show for a cycle to be seen in it.
 *
 * @param shortestHalfS shortest half-cycle of a unit [s]
 * @param longestHalfS longest half-cycle of a unit [s]
 * @param leastSwingK least swing at the face [K]
 * @param swingOverNoise least swing by the scatter of readings [1]
 * @param leastSamples fewest readings in a half-cycle
 * @param fewestCycles fewest whole cycles
 * @param uneven most that the length of a cycle may differ from the median, share of it
 * @param unequal halves that differ by less are taken as equal, share of a half-cycle
 */
public record CycleRules(
    double shortestHalfS,
    double longestHalfS,
    double leastSwingK,
    double swingOverNoise,
    double leastSamples,
    int fewestCycles,
    double uneven,
    double unequal) {
  /** A scatter of cycles needs two of them, and a fall is seen by two readings. */
  private static final int LEAST = 2;

  /** Refuses rules that no search could follow. */
  public CycleRules {
    Bounds.above("shortest half-cycle [s]", shortestHalfS, 0);
    Bounds.above("longest half-cycle [s]", longestHalfS, shortestHalfS);
    Bounds.above("least swing [K]", leastSwingK, 0);
    Bounds.atLeast("swing by scatter", swingOverNoise, 1);
    Bounds.atLeast("fewest readings in a half-cycle", leastSamples, LEAST);
    Bounds.atLeast("fewest cycles", fewestCycles, LEAST);
    Bounds.inside("uneven share", uneven, 0, 0.5);
    Bounds.inside("unequal share", unequal, 0, 0.5);
  }
}
