package org.drysill.reference.logs;

import org.drysill.physics.tracer.Confidence;
import org.drysill.physics.tracer.fit.ExpectedSpread;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * How sure an interval of the air change is.
 *
 * @param level share of cases in which it holds the truth [1]
 * @param dailySpread expected standard deviation of ln n between days [1]
 * @param dailyWorth degrees of freedom that the expectation is worth [1]
 * @param modelError standard uncertainty of ln n that no number of decays removes [1]
 */
public record IntervalRules(
    @Key(about = "Share of cases in which an interval holds the truth") Sourced level,
    @Key(about = "Expected standard deviation of ln n between days") Sourced dailySpread,
    @Key(about = "Degrees of freedom that the expectation is worth") Sourced dailyWorth,
    @Key(about = "Standard uncertainty of ln n that no number of decays removes")
        Sourced modelError) {
  /** The same for the physics. */
  public Confidence confidence() {
    return new Confidence(
        level.likely(),
        new ExpectedSpread(dailySpread.likely(), dailyWorth.likely()),
        modelError.likely());
  }
}
