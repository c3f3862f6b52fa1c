package org.drysill.physics.weather;

import java.util.Arrays;
import org.drysill.physics.Bounds;

/** Outdoor air hour by hour over a year of 365 days that begins on 1 January. */
public final class HourlyYear {
  /** Hours of the year. */
  public static final int HOURS = 8760;

  private static final int HOURS_PER_DAY = 24;
  private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  private static final int[] FIRST_HOUR = firstHours();
  private static final int[] MONTH_OF_HOUR = monthOfHour();

  private final double[] celsius;
  private final double[] vapourPa;

  /**
   * A year.
   *
   * @param celsius temperature of each hour [°C]
   * @param vapourPa vapour pressure of each hour [Pa]
   */
  public HourlyYear(double[] celsius, double[] vapourPa) {
    Bounds.inside("hours of temperature", celsius.length, HOURS, HOURS);
    Bounds.inside("hours of vapour pressure", vapourPa.length, HOURS, HOURS);
    this.celsius = celsius.clone();
    this.vapourPa = vapourPa.clone();
  }

  /** Temperature of an hour [°C], 0 being the first of January. */
  public double celsius(int hour) {
    return celsius[hour];
  }

  /** Vapour pressure of an hour [Pa]. */
  public double vapourPa(int hour) {
    return vapourPa[hour];
  }

  /** The month of an hour, 0 for January. */
  public static int month(int hour) {
    return MONTH_OF_HOUR[hour];
  }

  /** The first hour of a month, 0 for January; of month 12 the end of the year. */
  public static int firstHour(int month) {
    return FIRST_HOUR[month];
  }

  /** Mean of hourly values by month. */
  public static double[] monthlyMeans(double[] hourly) {
    double[] means = new double[DAYS.length];
    for (int m = 0; m < means.length; m++) {
      double sum = 0;
      for (int h = firstHour(m); h < firstHour(m + 1); h++) {
        sum += hourly[h];
      }
      means[m] = sum / (firstHour(m + 1) - firstHour(m));
    }
    return means;
  }

  private static int[] firstHours() {
    int[] first = new int[DAYS.length + 1];
    for (int m = 0; m < DAYS.length; m++) {
      first[m + 1] = first[m] + DAYS[m] * HOURS_PER_DAY;
    }
    return first;
  }

  private static int[] monthOfHour() {
    int[] months = new int[HOURS];
    for (int m = 0; m < DAYS.length; m++) {
      Arrays.fill(months, firstHour(m), firstHour(m + 1), m);
    }
    return months;
  }
}
