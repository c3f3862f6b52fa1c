package org.drysill.reference.surfaces;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * Years of construction.
 *
 * @param from the first year; open where missing
 * @param until the last year; open where missing
 */
public record YearSpan(
    @Key(about = "The first year", example = "1945") Optional<Integer> from,
    @Key(about = "The last year", example = "1979") Optional<Integer> until) {
  /** True where the year lies in the span. */
  public boolean contains(int year) {
    return from.filter(f -> year < f).isEmpty() && until.filter(u -> year > u).isEmpty();
  }
}
