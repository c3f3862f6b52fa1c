package org.drysill.options.effect;

import org.drysill.assess.Figure;
import org.drysill.options.MeasureEffect;

/**
 * Whether a measure does anything in this home that can be shown: at the likely values it closes
 * some of a shortfall of air or ends a month at risk, or it settles a published comparison that
 * falls short today. Where no cold place was surveyed, drier air has to do.
 *
 * @param least a smaller share than this is none [1]
 * @param anyPlace whether any cold place was surveyed
 */
record ShownEffect(double least, boolean anyPlace) {

  boolean in(MeasureEffect effect) {
    return closesShortfall(effect)
        || endsMonths(effect)
        || !effect.settles().isEmpty()
        || (!anyPlace && driesAir(effect));
  }

  private boolean closesShortfall(MeasureEffect effect) {
    double today = effect.lacksToday().map(Figure::likely).orElse(0.0);
    double then = effect.lacksAfter().map(Figure::likely).orElse(0.0);
    return today - then > least * today;
  }

  private static boolean endsMonths(MeasureEffect effect) {
    return effect.surfaces().stream().anyMatch(s -> s.monthsAfter().likely() < s.monthsBefore());
  }

  private boolean driesAir(MeasureEffect effect) {
    return effect.excessChange().filter(f -> f.likely() < -least).isPresent();
  }
}
