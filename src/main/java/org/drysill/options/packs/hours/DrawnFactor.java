package org.drysill.options.packs.hours;

import org.drysill.physics.Range;
import org.drysill.physics.samples.TwoPieceNormal;

/**
 * The temperature factor of a place, likely and in each sample.
 *
 * @param range the factor [1]
 * @param deviates how far off it is in each sample, normal with mean 0 and deviation 1
 */
public record DrawnFactor(Range range, Deviates deviates) {
  /** A deviate for each sample. */
  @FunctionalInterface
  public interface Deviates {
    /** The deviate of a sample. */
    double at(int sample);
  }

  double in(int sample) {
    return TwoPieceNormal.at(range, deviates.at(sample), 0, 1);
  }
}
