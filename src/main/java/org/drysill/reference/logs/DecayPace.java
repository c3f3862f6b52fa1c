package org.drysill.reference.logs;

import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * How fast a substance settles into its decay, how slow the decay may be and how far it must be
 * followed.
 *
 * @param floor least excess, in uncertainties of reading and background [1]
 * @param settle time left out after the peak [h]
 * @param patience time without a fall that could be told from noise, after which it has ended [h]
 * @param leastAirChanges least rate times time [1]
 * @param worstError largest standard error of the rate, as a share of it [1]
 */
public record DecayPace(
    @Key(about = "Least excess, in uncertainties of reading and background") Sourced floor,
    @Key(about = "Time left out after the peak, h") Sourced settle,
    @Key(about = "Time without a fall after which a decay has ended, h") Sourced patience,
    @Key(about = "Least rate times time") Sourced leastAirChanges,
    @Key(about = "Largest standard error of the rate, as a share of it") Sourced worstError) {}
