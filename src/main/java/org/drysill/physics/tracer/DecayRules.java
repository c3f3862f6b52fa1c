package org.drysill.physics.tracer;

import org.drysill.physics.Bounds;

/**
 * When a fall of concentration is a decay from which a rate may be read. σ is the scatter of a
 * reading, u its uncertainty together with that of the background.
 *
 * @param turn a rise or fall below this many σ is noise
 * @param floor a decay ends where the excess falls below this many u
 * @param longestGapHours a longer gap between readings ends a decay [h]
 * @param settleHours what is left out after the peak, while air mixes and surfaces take up [h]
 * @param patienceHours a fall of less than {@code turn} in this time has ended [h]
 * @param leastReadings fewest readings
 * @param leastAirChanges least rate times time [1]
 * @param outdoorShare most that the background may move, as a share of the fall
 * @param halvesFactor most that the rates of the first and second half may differ, as a factor
 * @param halvesErrors a difference of the halves within this many standard errors is no difference
 * @param scatterFactor scatter around the curve of up to this many σ is the sensor's
 * @param leastRSquared least share of the variance that the curve explains where scatter is more
 * @param worstError largest standard error of the rate, as a share of it
 */
public record DecayRules(
    double turn,
    double floor,
    double longestGapHours,
    double settleHours,
    double patienceHours,
    int leastReadings,
    double leastAirChanges,
    double outdoorShare,
    double halvesFactor,
    double halvesErrors,
    double scatterFactor,
    double leastRSquared,
    double worstError) {
  /** Each half of a decay is fitted on its own and needs four readings. */
  private static final int LEAST = 8;

  /** Refuses rules that no fit could follow. */
  public DecayRules {
    Bounds.above("turn", turn, 0);
    Bounds.atLeast("floor", floor, 1);
    Bounds.above("longest gap [h]", longestGapHours, 0);
    Bounds.atLeast("time to settle [h]", settleHours, 0);
    Bounds.above("patience [h]", patienceHours, 0);
    Bounds.atLeast("fewest readings", leastReadings, LEAST);
    Bounds.above("least air changes", leastAirChanges, 0);
    Bounds.above("share of outdoor movement", outdoorShare, 0);
    Bounds.atLeast("factor between halves", halvesFactor, 1);
    Bounds.atLeast("errors between halves", halvesErrors, 0);
    Bounds.atLeast("factor of scatter", scatterFactor, 0);
    Bounds.inside("least R²", leastRSquared, 0, 1);
    Bounds.above("largest error", worstError, 0);
  }
}
