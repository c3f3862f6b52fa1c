package org.drysill.reference.climate;

import java.util.List;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * The climate where nothing is known.
 *
 * @param fallback id of the climate of a home whose survey and rule set name none
 * @param nearestWithin how far away a climate may be that is taken because it is near [m]
 * @param southern rule sets of the southern half of the earth, whose January is a summer month
 * @param source why this one
 */
public record ClimateDefaults(
    @Key(about = "Id of the climate where nothing is known", example = "uk-average")
        String fallback,
    @Key(
            about = "How far away a climate may be that is taken because it is near",
            dimension = Dimension.LENGTH,
            unit = "m",
            example = "200000 m")
        Quantity nearestWithin,
    @Key(about = "Rule sets of the southern half of the earth") List<String> southern,
    @Key(about = "Why this one") Citation source) {
  /** Copies the list. */
  public ClimateDefaults {
    southern = List.copyOf(southern);
  }
}
