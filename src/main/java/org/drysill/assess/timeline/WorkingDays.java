package org.drysill.assess.timeline;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;
import org.drysill.reference.limits.PublicHolidays;

/** Days but Saturdays, Sundays and public holidays. */
final class WorkingDays {
  private final Set<LocalDate> holidays;

  WorkingDays(PublicHolidays holidays) {
    this.holidays = Set.copyOf(holidays.days());
  }

  /** The last of a number of working days, the first of which comes after a day. */
  LocalDate after(LocalDate day, int number) {
    LocalDate last = day;
    int left = number;
    while (left > 0) {
      last = last.plusDays(1);
      left -= isOne(last) ? 1 : 0;
    }
    return last;
  }

  private boolean isOne(LocalDate day) {
    return day.getDayOfWeek() != DayOfWeek.SATURDAY
        && day.getDayOfWeek() != DayOfWeek.SUNDAY
        && !holidays.contains(day);
  }
}
