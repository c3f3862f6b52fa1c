package org.drysill.physics.zones.fit;

/** A model: from unknowns to what instruments would read. */
@FunctionalInterface
public interface Forward {
  /**
   * Predicts readings.
   *
   * @param unknowns each counted in standard deviations from what was believed before
   * @return one value for each reading
   */
  double[] at(double[] unknowns);
}
