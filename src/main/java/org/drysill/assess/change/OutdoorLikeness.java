package org.drysill.assess.change;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * Whether the weather of two visits is alike enough.
 *
 * @param before outdoor temperature of the earlier visit [°C]
 * @param after outdoor temperature of the later visit [°C]
 * @param alike whether the difference is within the criterion; false where it is not known
 * @param said the same in words, with the criterion
 */
public record OutdoorLikeness(
    Optional<Figure> before, Optional<Figure> after, boolean alike, String said) {}
