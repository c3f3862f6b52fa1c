package org.drysill.reference.surfaces;

import java.util.Optional;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * The temperature factor of a kind of detail in homes of an age.
 *
 * @param kind the word for the kind in a survey
 * @param built years of construction; any where missing
 * @param factor the temperature factor
 */
public record TypicalDetail(
    @Key(about = "The word for the kind in a survey", example = "lintel") String kind,
    @Key(about = "Years of construction") Optional<YearSpan> built,
    @Key(about = "The temperature factor", example = "0.35..0.65") Spread factor) {
  /** True where it holds for a home of that year. */
  boolean covers(int year) {
    return built.filter(b -> !b.contains(year)).isEmpty();
  }
}
