package org.drysill.physics.tracer;

import org.drysill.physics.Range;

/**
 * What decays say of the air change n [1/h] of a room: a value with an interval, or no more than a
 * bound. Whoever reads it must say which of the two it is.
 */
public sealed interface AirChangeEvidence {
  /** How many decays stand behind it. */
  int decays();

  /**
   * From a gas that nothing stores.
   *
   * @param perHour n with its confidence interval [1/h]
   * @param decays how many decays
   * @param between standard deviation of n between decays beyond their errors, as a share of n:
   *     wind, doors
   */
  record FromTracer(Range perHour, int decays, double between) implements AirChangeEvidence {}

  /**
   * From vapour, whose slow decay runs at n/M. There is no likely value: M of a room is not known.
   *
   * @param atLeastPerHour n is at least this [1/h]: the lower end of the rate's interval, for M is
   *     at least 1
   * @param hardlyAbovePerHour n is hardly more than this [1/h]: the upper end of the rate's
   *     interval times the highest M
   * @param decays how many decays
   * @param capacitance M that was taken for granted [1]
   */
  record FromVapour(double atLeastPerHour, double hardlyAbovePerHour, int decays, Range capacitance)
      implements AirChangeEvidence {}
}
