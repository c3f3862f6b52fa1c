package org.drysill.assess.ventilation.adequacy;

import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.reference.rules.Strategy;
import org.drysill.survey.FanKind;

/** How a home is ventilated, as rule sets tell it apart. */
final class Strategies {
  private Strategies() {}

  static Strategy of(ProvidedAir air) {
    if (air.fans().stream().anyMatch(f -> f.fan().kind() == FanKind.BALANCED_HEAT_RECOVERY)) {
      return Strategy.BALANCED;
    }
    return air.fans().stream().anyMatch(Strategies::isContinuousExtract)
        ? Strategy.CONTINUOUS_EXTRACT
        : Strategy.NATURAL;
  }

  static boolean isContinuousExtract(FanFlow fan) {
    return fan.fan().kind() == FanKind.CONTINUOUS_EXTRACT;
  }
}
