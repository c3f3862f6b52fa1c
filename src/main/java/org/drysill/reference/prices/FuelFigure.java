package org.drysill.reference.prices;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A published number that belongs to a fuel.
 *
 * @param fuel the fuel by its word in a survey, such as {@code mains gas}
 * @param value the number, in the unit of the list that it stands in
 * @param source where it comes from
 * @param note what else should be known
 */
public record FuelFigure(
    @Key(about = "The fuel by its word in a survey", example = "mains gas") String fuel,
    @Key(about = "The number, in the unit of the list", example = "0.0593") Quantity value,
    @Key(about = "Where it comes from") Citation source,
    @Key(about = "What else should be known") Optional<String> note) {}
