package org.drysill.physics.tracer;

import org.drysill.physics.tracer.fit.FittedExponential;

/** A fall that was looked at, with what came of it. */
public sealed interface Decay {
  /** Where in the series it lies. */
  Stretch stretch();

  /**
   * A decay whose rate counts.
   *
   * @param stretch where it lies
   * @param fit its rate, errors and residuals
   */
  record Accepted(Stretch stretch, FittedExponential fit) implements Decay {}

  /**
   * A fall whose rate does not count.
   *
   * @param stretch where it lies
   * @param reason why
   * @param found the number that fell short or went beyond; {@link Rejection} says of what
   * @param allowed the number that it was held against
   */
  record Rejected(Stretch stretch, Rejection reason, double found, double allowed)
      implements Decay {}
}
