package org.drysill.assess.change.air;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * Whether the weather of two visits is alike enough.
 *
 * @param before outdoor temperature of the earlier visit [°C]
 * @param after outdoor temperature of the later visit [°C]
 * @param vapourBefore outdoor vapour pressure of the earlier visit [Pa]
 * @param vapourAfter outdoor vapour pressure of the later visit [Pa]
 * @param alike whether every criterion holds; false where it is not known
 * @param said the same in words, with the criteria and their limits
 */
public record OutdoorLikeness(
    Optional<Figure> before,
    Optional<Figure> after,
    Optional<Figure> vapourBefore,
    Optional<Figure> vapourAfter,
    boolean alike,
    String said) {}
