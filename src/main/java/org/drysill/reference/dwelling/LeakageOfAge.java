package org.drysill.reference.dwelling;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Air leakage of homes up to a year of construction.
 *
 * @param until the last year that it covers
 * @param n50 air changes at 50 Pa [1/h]
 * @param source where it comes from
 */
public record LeakageOfAge(
    @Key(about = "The last year that it covers", example = "1945") int until,
    @Key(
            about = "Air changes at 50 Pa",
            dimension = Dimension.AIR_CHANGE,
            unit = "/h",
            example = "12..18 /h")
        Quantity n50,
    @Key(about = "Where it comes from") Citation source) {}
