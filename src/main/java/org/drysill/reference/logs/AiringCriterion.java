package org.drysill.reference.logs;

import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * The shape of an opened window.
 *
 * @param leastFall least fall of vapour [kg/m³]
 * @param leastKelvin least fall of temperature [K]
 * @param withinHours time in which both fall by that much [h]
 */
public record AiringCriterion(
    @Key(about = "Least fall of vapour, kg/m3") Sourced leastFall,
    @Key(about = "Least fall of temperature, K") Sourced leastKelvin,
    @Key(about = "Time in which both fall by that much, h") Sourced withinHours) {}
