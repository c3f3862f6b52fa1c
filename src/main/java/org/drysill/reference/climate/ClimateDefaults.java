package org.drysill.reference.climate;

import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * The climate where nothing is known.
 *
 * @param fallback id of the climate of a home whose survey and rule set name none
 * @param source why this one
 */
public record ClimateDefaults(
    @Key(about = "Id of the climate where nothing is known", example = "uk-average")
        String fallback,
    @Key(about = "Why this one") Citation source) {}
