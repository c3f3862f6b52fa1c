package org.drysill.physics.surface;

import org.drysill.physics.Bounds;
import org.drysill.physics.weather.HourlyYear;

/** The air on both sides of a surface, hour by hour over the {@link HourlyYear}. */
public final class HourlyAir {
  private final double[] indoorCelsius;
  private final double[] indoorPa;
  private final double[] outdoorCelsius;

  /**
   * A year of air.
   *
   * @param indoorCelsius temperature indoors [°C]
   * @param indoorPa vapour pressure indoors [Pa]
   * @param outdoorCelsius temperature outdoors that the surface follows [°C]: of the hour for a
   *     pane, of the day before for a heavy wall
   */
  public HourlyAir(double[] indoorCelsius, double[] indoorPa, double[] outdoorCelsius) {
    this.indoorCelsius = year("indoor temperatures", indoorCelsius);
    this.indoorPa = year("indoor vapour pressures", indoorPa);
    this.outdoorCelsius = year("outdoor temperatures", outdoorCelsius);
  }

  private static double[] year(String name, double[] values) {
    Bounds.inside("number of " + name, values.length, HourlyYear.HOURS, HourlyYear.HOURS);
    return values.clone();
  }

  /** Temperature of a surface of a temperature factor [°C]. */
  double surfaceCelsius(double factor, int hour) {
    return outdoorCelsius[hour] + factor * (indoorCelsius[hour] - outdoorCelsius[hour]);
  }

  /** Vapour pressure indoors [Pa]. */
  double indoorPa(int hour) {
    return indoorPa[hour];
  }

  /** Mean over the hours up to and with each, the year being a ring. */
  public static double[] runningMean(double[] hourly, int hours) {
    Bounds.inside("hours of a running mean", hours, 1, hourly.length);
    double[] means = new double[hourly.length];
    double sum = 0;
    for (int h = hourly.length - hours + 1; h < hourly.length; h++) {
      sum += hourly[h];
    }
    for (int h = 0; h < hourly.length; h++) {
      sum += hourly[h];
      means[h] = sum / hours;
      sum -= hourly[Math.floorMod(h - hours + 1, hourly.length)];
    }
    return means;
  }
}
