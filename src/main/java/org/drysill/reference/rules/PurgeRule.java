package org.drysill.reference.rules;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Quick airing of a habitable room.
 *
 * @param airChange air changes of the room while it is aired
 * @param openings area of openings by floor area
 * @param windSpeed wind speed that the areas are made for
 * @param temperatureDifference indoor less outdoor temperature that the areas are made for
 * @param source where it is printed
 * @param note what the reader should know about it
 */
public record PurgeRule(
    @Key(
            about = "Air changes of the room while it is aired",
            dimension = Dimension.AIR_CHANGE,
            unit = "/h",
            min = 0,
            example = "4 /h")
        Optional<Quantity> airChange,
    @Key(about = "Area of openings by floor area") List<PurgeShare> openings,
    @Key(
            about = "Wind speed that the areas are made for",
            dimension = Dimension.SPEED,
            unit = "m/s",
            min = 0,
            example = "2.1 m/s")
        Optional<Quantity> windSpeed,
    @Key(
            about = "Indoor less outdoor temperature that the areas are made for",
            dimension = Dimension.TEMPERATURE_DIFFERENCE,
            unit = "K",
            min = 0,
            example = "3 K")
        Optional<Quantity> temperatureDifference,
    @Key(about = "Where it is printed") Citation source,
    @Key(about = "What the reader should know about it") Optional<String> note) {
  /** Copies the list. */
  public PurgeRule {
    openings = List.copyOf(openings);
  }
}
