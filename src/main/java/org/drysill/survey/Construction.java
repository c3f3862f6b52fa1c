package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * What the home is made of, and hazards known of it.
 *
 * @param walls the outside walls in a few words
 * @param roof the roof in a few words
 * @param listed protected as a historic building
 * @param radonArea in an area with raised radon
 * @param asbestos asbestos known or suspected
 */
public record Construction(
    @Key(about = "The outside walls in a few words", example = "solid brick")
        Optional<String> walls,
    @Key(about = "The roof in a few words", example = "pitched, 100 mm insulation at ceiling")
        Optional<String> roof,
    @Key(about = "Protected as a historic building", example = "no") Optional<YesNo> listed,
    @Key(about = "In an area with raised radon", example = "unknown") Optional<YesNo> radonArea,
    @Key(about = "Asbestos known or suspected", example = "unknown") Optional<YesNo> asbestos) {}
