package org.drysill.physics.tracer.balance;

import java.util.function.Function;
import org.drysill.physics.Range;
import org.drysill.physics.tracer.balance.Balance.Found;
import org.drysill.physics.tracer.balance.Balance.Reason;
import org.drysill.physics.tracer.balance.Balance.Refused;

/**
 * The balance of a well-mixed room over a period long enough for what it stores to come and go; ISO
 * 13788:2012, Annex A, for vapour, and the constant-injection method of ASTM E741-11 for CO₂ that
 * people give off (both memory).
 *
 * <pre>
 * q = G / Δ        n = q / V        G = q · Δ
 * </pre>
 *
 * <p>Δ mean excess over the simultaneous outdoor air, G mean production, q flow [m³/s], V volume
 * [m³]. Vapour: Δ [kg/m³] and G [kg/s]. CO₂: Δ [ratio] and G [m³/s]. The ends of the answer combine
 * the ends of production (or flow) with those of the mean excess. Where flow and production vary
 * together, as where windows are opened for showers, the quotient of means is below the mean flow.
 */
public final class QuasiSteadyBalance {
  private static final double SECONDS_AN_HOUR = 3600;

  private QuasiSteadyBalance() {}

  /** Flow q [m³/s] that a production and a mean excess imply. */
  public static Balance flowM3S(Range production, PeriodMean mean, BalanceLimits limits) {
    return answer(mean, limits, production::dividedBy);
  }

  /** Air change n [1/h] that a production and a mean excess imply. */
  public static Balance airChangePerHour(
      Range production, Range volumeM3, PeriodMean mean, BalanceLimits limits) {
    return answer(
        mean,
        limits,
        excess -> production.dividedBy(excess).dividedBy(volumeM3).times(SECONDS_AN_HOUR));
  }

  /** Production G that a known flow q [m³/s] and a mean excess imply. */
  public static Balance production(Range flowM3S, PeriodMean mean, BalanceLimits limits) {
    return answer(mean, limits, flowM3S::times);
  }

  private static Balance answer(
      PeriodMean mean, BalanceLimits limits, Function<Range, Range> question) {
    if (mean.spanDays() < limits.leastDays()) {
      return new Refused(Reason.PERIOD_TOO_SHORT, mean.spanDays(), limits.leastDays());
    }
    if (mean.coverage() < limits.leastCoverage()) {
      return new Refused(Reason.TOO_MANY_GAPS, mean.coverage(), limits.leastCoverage());
    }
    if (mean.excess() < limits.leastExcess()) {
      return new Refused(Reason.EXCESS_TOO_SMALL, mean.excess(), limits.leastExcess());
    }
    Range excess = Range.around(mean.excess(), limits.coverageFactor() * mean.uncertainty());
    return excess.low() > 0
        ? new Found(question.apply(excess))
        : new Refused(Reason.EXCESS_TOO_UNCERTAIN, excess.low(), 0);
  }
}
