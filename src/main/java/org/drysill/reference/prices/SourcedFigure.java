package org.drysill.reference.prices;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A number with its source.
 *
 * @param value the number, in the unit that its holder states
 * @param source where it comes from
 * @param note what else should be known
 */
public record SourcedFigure(
    @Key(about = "The number", example = "0.035") Quantity value,
    @Key(about = "Where it comes from") Citation source,
    @Key(about = "What else should be known") Optional<String> note) {}
