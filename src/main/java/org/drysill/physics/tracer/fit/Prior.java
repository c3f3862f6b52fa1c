package org.drysill.physics.tracer.fit;

import org.drysill.physics.Bounds;

/**
 * What is known of the level that an exponential tends to before it is fitted.
 *
 * @param value the likely level
 * @param uncertainty its standard uncertainty, at least 0; infinite where nothing is known
 */
public record Prior(double value, double uncertainty) {
  /** A level of which nothing is known. */
  public static final Prior UNKNOWN = new Prior(0, Double.POSITIVE_INFINITY);

  /** Refuses what is no number. */
  public Prior {
    Bounds.finite("level", value);
    Bounds.inside("uncertainty of the level", uncertainty, 0, Double.POSITIVE_INFINITY);
  }
}
