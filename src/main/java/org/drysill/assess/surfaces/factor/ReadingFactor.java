package org.drysill.assess.surfaces.factor;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.yaml.Moment;

/**
 * What one surface reading gives.
 *
 * @param at when it was taken
 * @param point where on the surface
 * @param surface surface temperature with the instrument's error [°C]
 * @param air air temperature of the room [°C], where one is to be had
 * @param outdoor outdoor temperature [°C], where one is to be had
 * @param quality how much it can tell
 * @param factor the temperature factor with its error; empty when refused
 * @param why the reason of the quality in a plain sentence
 */
public record ReadingFactor(
    Optional<Moment> at,
    Optional<String> point,
    Range surface,
    Optional<Range> air,
    Optional<Range> outdoor,
    ReadingQuality quality,
    Optional<Range> factor,
    String why) {}
