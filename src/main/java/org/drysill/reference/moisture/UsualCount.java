package org.drysill.reference.moisture;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * How often something is taken to happen where the survey does not say.
 *
 * @param perWeek the likely number a week, in what the rate counts
 * @param between its bounds
 * @param eachPerson true where it is the number of each person, false for the household
 * @param source where it comes from
 */
public record UsualCount(
    @Key(about = "The likely number a week", min = 0) Quantity perWeek,
    @Key(about = "Its bounds", min = 0) Quantity between,
    @Key(about = "Whether it is the number of each person") boolean eachPerson,
    @Key(about = "Where it comes from") Citation source) {
  /** The number a week. */
  public Range range() {
    return new Spread(perWeek, Optional.of(between)).range();
  }
}
