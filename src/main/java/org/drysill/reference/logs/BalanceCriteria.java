package org.drysill.reference.logs;

import org.drysill.physics.tracer.balance.BalanceLimits;
import org.drysill.reference.Sourced;
import org.drysill.reference.readings.BalanceRules;
import org.drysill.yaml.Key;

/**
 * When the means of a log can be balanced against production.
 *
 * @param daysOfVapour least time for vapour [d]
 * @param daysOfCo2 least time for CO₂ [d]
 * @param leastCo2 least mean excess of CO₂ [ratio]
 * @param coverage least share of the time with readings [1]
 * @param coverageFactor standard uncertainties that an interval takes to each side [1]
 * @param buildUpError largest standard error of the level that a night's build-up tends to, as a
 *     share of it [1]
 */
public record BalanceCriteria(
    @Key(about = "Least time for vapour, d") Sourced daysOfVapour,
    @Key(about = "Least time for CO2, d") Sourced daysOfCo2,
    @Key(about = "Least mean excess of CO2, as ratio") Sourced leastCo2,
    @Key(about = "Least share of the time with readings") Sourced coverage,
    @Key(about = "Standard uncertainties that an interval takes to each side")
        Sourced coverageFactor,
    @Key(about = "Largest standard error of the end of a build-up, as a share of it")
        Sourced buildUpError) {
  /** The limits for vapour [kg/m³], whose least excess is the one that single readings know. */
  public BalanceLimits ofVapour(BalanceRules readings) {
    return limits(readings.leastExcess(), daysOfVapour);
  }

  /** The limits for CO₂ [ratio]. */
  public BalanceLimits ofCo2() {
    return limits(leastCo2.likely(), daysOfCo2);
  }

  private BalanceLimits limits(double leastExcess, Sourced days) {
    return new BalanceLimits(
        leastExcess, days.likely(), coverage.likely(), coverageFactor.likely());
  }
}
