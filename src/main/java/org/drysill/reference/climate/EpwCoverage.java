package org.drysill.reference.climate;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import org.drysill.reference.climate.EpwProblems.Spot;
import org.drysill.reference.climate.HourlyWeather.Hour;

/** Whether the records of a weather file are enough for the mean of every month. */
final class EpwCoverage {
  /** Up to a tenth of a month may be missing: a few days lost do not move its mean much. */
  private static final double LEAST = 0.9;

  private static final int HOURS_PER_DAY = 24;

  private final List<Hour> hours;
  private final int recordsPerHour;

  EpwCoverage(List<Hour> hours, int recordsPerHour) {
    this.hours = hours;
    this.recordsPerHour = recordsPerHour;
  }

  void check(EpwProblems problems, int lastLine) {
    for (Month month : Month.values()) {
      long usable =
          hours.stream().filter(h -> h.month() == month.getValue()).filter(Hour::usable).count();
      long full = (long) month.minLength() * HOURS_PER_DAY * recordsPerHour;
      if (usable < LEAST * full) {
        String name = month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        problems.add(
            EpwCode.MONTH_NOT_COVERED,
            new Spot(lastLine, 1, name, ""),
            usable + " usable records of " + name,
            "at least nine tenths of " + full + ", with temperature and humidity");
      }
    }
  }
}
