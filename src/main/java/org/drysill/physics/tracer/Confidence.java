package org.drysill.physics.tracer;

import org.drysill.physics.Bounds;
import org.drysill.physics.tracer.fit.ExpectedSpread;

/**
 * How sure an interval is to be, and what is expected before any decay is read.
 *
 * @param level share of cases in which the interval holds the truth, such as 0.95
 * @param daily how far ln n varies from day to day
 * @param model standard uncertainty of ln n that no number of decays removes: mixing, and days
 *     whose decays can be read being calmer than the rest
 */
public record Confidence(double level, ExpectedSpread daily, double model) {
  /** Refuses certainty. */
  public Confidence {
    Bounds.inside("level of confidence", level, 0.5, 0.999);
    Bounds.atLeast("uncertainty of the model", model, 0);
  }
}
