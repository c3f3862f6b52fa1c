package org.drysill.reference.readings;

import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * When readings can tell the production of moisture.
 *
 * @param leastExcess below this vapour excess they cannot [kg/m³]
 * @param source where the value comes from
 */
public record BalanceRules(
    @Key(about = "Below this vapour excess they cannot, in kg/m3", min = 0) double leastExcess,
    @Key(about = "Where the value comes from") Citation source) {}
