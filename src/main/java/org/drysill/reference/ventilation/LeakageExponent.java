package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * The exponent of the power law of leakage with its source.
 *
 * @param value the exponent
 * @param source where it comes from
 */
public record LeakageExponent(
    @Key(about = "The exponent", min = 0.5, max = 1, example = "0.65") double value,
    @Key(about = "Where it comes from") Citation source) {}
