package org.drysill.assess.surfaces.year;

import org.drysill.physics.weather.HourlyYear;

/**
 * A day of a year of 365 days, as exactly as made weather deserves.
 *
 * @param month 1 for January
 * @param third 0 for its early, 1 for its middle, 2 for its late part
 */
public record DayOfYear(int month, int third) {
  /** The day of an hour of the year. */
  static DayOfYear ofHour(int hour) {
    int month = HourlyYear.month(hour);
    int first = HourlyYear.firstHour(month);
    int hours = HourlyYear.firstHour(month + 1) - first;
    return new DayOfYear(month + 1, 3 * (hour - first) / hours);
  }
}
