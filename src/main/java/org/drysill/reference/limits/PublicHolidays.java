package org.drysill.reference.limits;

import java.time.LocalDate;
import java.util.List;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * The days that are no working days although they are no Saturdays or Sundays.
 *
 * @param of where they are kept
 * @param knownUntil the last day up to which all of them are listed
 * @param days the days
 * @param source where they come from
 */
public record PublicHolidays(
    @Key(about = "Where they are kept", example = "England") String of,
    @Key(about = "The last day up to which all of them are listed", example = "2027-12-31")
        LocalDate knownUntil,
    @Key(about = "The days", required = true) List<LocalDate> days,
    @Key(about = "Where they come from") Citation source) {
  /** Copies the list. */
  public PublicHolidays {
    days = List.copyOf(days);
  }
}
