package org.drysill.survey;

import java.time.LocalDate;
import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.yaml.Key;

/**
 * The filter of a fan or unit.
 *
 * @param kind what it is
 * @param changed the day of its last change
 * @param everyMonths after how many months its maker wants it changed
 */
public record Filter(
    @LeftOut @Key(about = "What it is", example = "coarse, washable") Optional<String> kind,
    @Key(about = "The day of its last change", example = "2025-10-05") Optional<LocalDate> changed,
    @Key(
            about = "After how many months its maker wants it changed",
            min = 1,
            max = 120,
            high = 36,
            example = "12")
        Optional<Integer> everyMonths) {
  /** The day of its next change; empty where the day of the last or the span is not known. */
  public Optional<LocalDate> next() {
    return changed.flatMap(day -> everyMonths.map(day::plusMonths));
  }
}
