package org.drysill.options.effect;

import org.drysill.assess.Figure;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.physics.Range;
import org.drysill.reference.measures.MoistureEffect;

/**
 * The water that a measure keeps out of the air or takes from it.
 *
 * @param moisture the sources of the home
 * @param mostRemoved the most that a machine takes of the water given off [1]
 */
record MoistureShares(MoistureResult moisture, double mostRemoved) {
  private static final double SECONDS_PER_DAY = 86_400;

  /** Water less in the air [kg/s]. */
  Range water(MoistureEffect effect) {
    Range avoided =
        effect.shareAvoided().map(s -> touched(effect).times(s.range())).orElse(Range.exactly(0));
    return avoided.plus(removed(effect));
  }

  /** The sources that the effect touches, together [kg/s]. */
  private Range touched(MoistureEffect effect) {
    return moisture.items().stream()
        .filter(i -> effect.sources().contains(i.kind()))
        .map(MoistureResult.Item::production)
        .map(Figure::value)
        .reduce(Range.exactly(0), Range::plus);
  }

  /** G' / G [1]. */
  Range left(Range water) {
    double all = moisture.itemised().likely();
    return SteadyZone.ordered(
        left(water.high(), all), left(water.likely(), all), left(water.low(), all));
  }

  private static double left(double water, double all) {
    return all > 0 ? Math.max(0, 1 - water / all) : 1;
  }

  private Range removed(MoistureEffect effect) {
    double most = mostRemoved * moisture.itemised().likely();
    return effect
        .removedKgPerDay()
        .map(r -> r.range().times(1 / SECONDS_PER_DAY))
        .map(r -> new Range(least(r.low(), most), least(r.likely(), most), least(r.high(), most)))
        .orElse(Range.exactly(0));
  }

  private static double least(double a, double b) {
    return Math.min(a, b);
  }
}
