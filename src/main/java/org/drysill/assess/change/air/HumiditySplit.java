package org.drysill.assess.change.air;

import java.util.function.ToDoubleFunction;
import org.drysill.physics.Range;

/**
 * A change of relative humidity, split into what each of its three causes makes of it: the
 * temperature of the room, the vapour of outdoor air, and what is there on top of it (moisture
 * released indoors against the air that carries it off). With φ = (pe + Δp) / ps(T), from state 1
 * to state 2:
 *
 * <pre>
 * Δφ(temperature) = ½ (p1 + p2) (1/ps(T2) − 1/ps(T1))       p = pe + Δp
 * Δφ(outdoors)    = ½ (pe2 − pe1) (1/ps(T1) + 1/ps(T2))
 * Δφ(indoors)     = ½ (Δp2 − Δp1) (1/ps(T1) + 1/ps(T2))
 * </pre>
 *
 * <p>A change made first counts differently from the same change made last. Each part is the mean
 * over all six orders in which the three can be made (the Shapley value, Shapley 1953; memory), so
 * that none comes first; since φ is linear in pe and Δp, that mean has the closed form above. The
 * parts are the whole change, exactly. Saturation over water, as sensors show it.
 *
 * @param fromTemperature as a ratio
 * @param fromOutdoors as a ratio
 * @param fromIndoors as a ratio
 */
record HumiditySplit(double fromTemperature, double fromOutdoors, double fromIndoors) {
  static HumiditySplit of(SplitAir before, SplitAir after) {
    double sum = before.perPascal() + after.perPascal();
    return new HumiditySplit(
        (before.pressure() + after.pressure()) / 2 * (after.perPascal() - before.perPascal()),
        (after.outdoorPa() - before.outdoorPa()) / 2 * sum,
        (after.excess() - before.excess()) / 2 * sum);
  }

  /** The part of all vapour, wherever from, as a ratio. */
  double fromMoisture() {
    return fromOutdoors + fromIndoors;
  }

  /**
   * A part with the bounds that the errors of the six values behind it give it, as root of the sum
   * of squares.
   */
  static Range bounded(ToDoubleFunction<HumiditySplit> part, AirState before, AirState after) {
    SplitAir first = before.forSplit();
    SplitAir second = after.forSplit();
    double squares =
        squares(first, before.errors(), air -> part.applyAsDouble(of(air, second)))
            + squares(second, after.errors(), air -> part.applyAsDouble(of(first, air)));
    return Range.around(part.applyAsDouble(of(first, second)), Math.sqrt(squares));
  }

  private static double squares(SplitAir air, SplitAir error, ToDoubleFunction<SplitAir> part) {
    return square(part, air.warmerBy(error.celsius()), air.warmerBy(-error.celsius()))
        + square(part, air.damperBy(error.humidity()), air.damperBy(-error.humidity()))
        + square(
            part,
            air.damperOutdoorsBy(error.outdoorPa()),
            air.damperOutdoorsBy(-error.outdoorPa()));
  }

  private static double square(ToDoubleFunction<SplitAir> part, SplitAir high, SplitAir low) {
    double half = (part.applyAsDouble(high) - part.applyAsDouble(low)) / 2;
    return half * half;
  }
}
