package org.drysill.assess;

import org.drysill.physics.weather.HourlyYear;
import org.drysill.reference.climate.HourlyWeather;
import org.drysill.reference.climate.HourlyWeather.Hour;

/**
 * A weather file as a year of 365 days: a leap day is left out, several records of an hour are
 * averaged, and hours that the file lacks are filled in a straight line between their neighbours.
 *
 * @param year the hours
 * @param filled how many of them the file lacked
 */
record HoursOfFile(HourlyYear year, int filled) {
  private static final int FEBRUARY = 2;
  private static final int LEAP_DAY = 29;
  private static final int HOURS_PER_DAY = 24;

  /** Takes the hours of a file that covers all months. */
  static HoursOfFile of(HourlyWeather weather) {
    double[] celsius = new double[HourlyYear.HOURS];
    double[] vapour = new double[HourlyYear.HOURS];
    int[] records = new int[HourlyYear.HOURS];
    for (Hour record : weather.records()) {
      if (record.usable() && !isLeapDay(record)) {
        int hour = index(record);
        celsius[hour] += record.temperature().orElseThrow();
        vapour[hour] += MonthlyWeather.vapourPressure(record);
        records[hour]++;
      }
    }
    int filled = 0;
    for (int h = 0; h < records.length; h++) {
      if (records[h] == 0) {
        filled++;
      } else {
        celsius[h] /= records[h];
        vapour[h] /= records[h];
      }
    }
    fill(celsius, records);
    fill(vapour, records);
    return new HoursOfFile(new HourlyYear(celsius, vapour), filled);
  }

  private static boolean isLeapDay(Hour record) {
    return record.month() == FEBRUARY && record.day() == LEAP_DAY;
  }

  private static int index(Hour record) {
    return HourlyYear.firstHour(record.month() - 1)
        + (record.day() - 1) * HOURS_PER_DAY
        + record.hour()
        - 1;
  }

  /** The year being a ring, every gap has a known hour on either side. */
  private static void fill(double[] values, int[] records) {
    int length = values.length;
    for (int h = 0; h < length; h++) {
      if (records[h] == 0) {
        int before = 1;
        while (records[Math.floorMod(h - before, length)] == 0) {
          before++;
        }
        int after = 1;
        while (records[(h + after) % length] == 0) {
          after++;
        }
        double from = values[Math.floorMod(h - before, length)];
        double to = values[(h + after) % length];
        values[h] = from + (to - from) * before / (before + after);
      }
    }
  }
}
