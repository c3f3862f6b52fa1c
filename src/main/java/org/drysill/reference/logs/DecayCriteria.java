package org.drysill.reference.logs;

import org.drysill.physics.tracer.DecayRules;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What a decay must be for its rate to count; {@link DecayRules} says what each means.
 *
 * @param turn least turn, in standard deviations of a reading [1]
 * @param longestGap longest gap between readings [h]
 * @param leastReadings fewest readings
 * @param outdoorShare most movement of outdoor air, as a share of the fall [1]
 * @param halvesFactor most that the rates of the two halves may differ [1]
 * @param halvesErrors standard errors within which they do not differ [1]
 * @param scatterFactor scatter that is the sensor's, in standard deviations of a reading [1]
 * @param leastRSquared least R² where the scatter is more [1]
 * @param co2 pace of a decay of CO₂
 * @param vapour pace of a decay of vapour
 */
public record DecayCriteria(
    @Key(about = "Least turn, in standard deviations of a reading") Sourced turn,
    @Key(about = "Longest gap between readings, h") Sourced longestGap,
    @Key(about = "Fewest readings") Sourced leastReadings,
    @Key(about = "Most movement of outdoor air, as a share of the fall") Sourced outdoorShare,
    @Key(about = "Most that the rates of the two halves may differ") Sourced halvesFactor,
    @Key(about = "Standard errors within which they do not differ") Sourced halvesErrors,
    @Key(about = "Scatter that is the sensor's, in standard deviations of a reading")
        Sourced scatterFactor,
    @Key(about = "Least share of the variance explained where the scatter is more")
        Sourced leastRSquared,
    @Key(about = "Pace of a decay of CO2") DecayPace co2,
    @Key(about = "Pace of a decay of vapour") DecayPace vapour) {
  /** The rules for CO₂. */
  public DecayRules ofCo2() {
    return rules(co2);
  }

  /** The rules for vapour. */
  public DecayRules ofVapour() {
    return rules(vapour);
  }

  private DecayRules rules(DecayPace pace) {
    return new DecayRules(
        turn.likely(),
        pace.floor().likely(),
        longestGap.likely(),
        pace.settle().likely(),
        pace.patience().likely(),
        (int) leastReadings.likely(),
        pace.leastAirChanges().likely(),
        outdoorShare.likely(),
        halvesFactor.likely(),
        halvesErrors.likely(),
        scatterFactor.likely(),
        leastRSquared.likely(),
        pace.worstError().likely());
  }
}
