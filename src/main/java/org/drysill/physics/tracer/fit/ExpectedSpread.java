package org.drysill.physics.tracer.fit;

import org.drysill.physics.Bounds;

/**
 * How far a quantity is expected to vary between estimates before any of them is seen.
 *
 * @param deviation τ0, its standard deviation
 * @param worth ν0, how many degrees of freedom that expectation is worth, above 0
 */
public record ExpectedSpread(double deviation, double worth) {
  /** Refuses an expectation that is worth nothing: one estimate alone would have no spread. */
  public ExpectedSpread {
    Bounds.atLeast("expected deviation", deviation, 0);
    Bounds.above("worth of the expectation", worth, 0);
  }
}
