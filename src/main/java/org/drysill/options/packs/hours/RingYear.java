package org.drysill.options.packs.hours;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.drysill.assess.surfaces.year.YearsAgain;
import org.drysill.physics.surface.GlassCondensate;
import org.drysill.physics.surface.PaneYear;
import org.drysill.physics.weather.HourlyYear;

/**
 * The hours outdoors in the order in which surfaces live through them: a ring that begins in the
 * middle of the warmest month, at noon or at midnight, in half days that each lie in one month.
 */
public final class RingYear {
  /** Hours of a half day. */
  public static final int HALF_DAY = 12;

  static final int MONTHS = 12;
  static final int HALVES = HourlyYear.HOURS / HALF_DAY;

  private static final int HOURS_PER_DAY = 24;
  private static final double SECONDS_PER_HOUR = 3600;

  /**
   * Outdoor temperature that panes follow, that walls follow [°C], vapour that rooms follow [Pa].
   */
  final double[] celsius;

  final double[] slowCelsius;
  final double[] vapourPa;

  /** Of each half day the coldest, the moistest, its month, and which of its hours is morning. */
  final double[] coldest;

  final double[] moistest;
  final int[] month;
  final int[] morning;

  /** Means of months. */
  final double[] meanSlowCelsius;

  final double[] meanVapourPa;

  /** The film of panes, and how much settles by pressure [kg/(m²·h·Pa)]. */
  final PaneYear.Pane pane;

  final double transfer;

  /** The relative humidity at which a wall is at risk [1]. */
  final double mouldLimit;

  private final YearsAgain years;
  private final Map<Double, Indoors> indoors = new HashMap<>();

  /**
   * The year.
   *
   * @param years the hours and how surfaces follow them
   * @param mouldLimit the relative humidity at which a wall or corner is at risk [1]
   */
  public RingYear(YearsAgain years, double mouldLimit) {
    this.years = years;
    this.mouldLimit = mouldLimit;
    this.pane = years.pane();
    this.transfer = GlassCondensate.transferCoefficient(pane.filmCoefficient()) * SECONDS_PER_HOUR;
    this.celsius = ring(years.outdoorCelsius());
    this.slowCelsius = ring(years.slowCelsius());
    this.vapourPa = ring(years.slowVapourPa());
    this.coldest = least(celsius);
    this.moistest = most(vapourPa);
    this.month = new int[HALVES];
    this.morning = new int[HALVES];
    for (int b = 0; b < HALVES; b++) {
      int first = (years.start() + b * HALF_DAY) % HourlyYear.HOURS;
      month[b] = HourlyYear.month(first);
      int to = Math.floorMod(pane.morningHour() - first, HOURS_PER_DAY);
      morning[b] = to < HALF_DAY ? to : -1;
    }
    this.meanSlowCelsius = means(slowCelsius);
    this.meanVapourPa = means(vapourPa);
  }

  /** Hourly values from January on, in the order of the ring. */
  public double[] ring(double[] hourly) {
    double[] ring = new double[HourlyYear.HOURS];
    int start = years.start();
    System.arraycopy(hourly, start, ring, 0, ring.length - start);
    System.arraycopy(hourly, 0, ring, ring.length - start, start);
    return ring;
  }

  /** A room at a set point [°C]. */
  Indoors indoors(double setpoint) {
    return indoors.computeIfAbsent(setpoint, s -> new Indoors(this, ring(years.indoorCelsius(s))));
  }

  /** What stays of water on a pane [kg/m²]: nothing is less than none, and some runs off. */
  double onPane(double water) {
    return Math.max(0, Math.min(pane.clingsKgM2(), water));
  }

  /** True where this much water is seen. */
  boolean isSeen(double water) {
    return water >= pane.visibleKgM2();
  }

  /** Hours of a month, 0 for January. */
  static int hours(int month) {
    return HourlyYear.firstHour(month + 1) - HourlyYear.firstHour(month);
  }

  /** Means of months of values in the order of the ring. */
  double[] means(double[] ring) {
    double[] means = new double[MONTHS];
    for (int i = 0; i < ring.length; i++) {
      means[month[i / HALF_DAY]] += ring[i];
    }
    for (int m = 0; m < MONTHS; m++) {
      means[m] /= hours(m);
    }
    return means;
  }

  /** The least of each half day. */
  static double[] least(double[] ring) {
    double[] least = new double[HALVES];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    for (int i = 0; i < ring.length; i++) {
      least[i / HALF_DAY] = Math.min(least[i / HALF_DAY], ring[i]);
    }
    return least;
  }

  /** The most of each half day. */
  static double[] most(double[] ring) {
    double[] most = new double[HALVES];
    Arrays.fill(most, Double.NEGATIVE_INFINITY);
    for (int i = 0; i < ring.length; i++) {
      most[i / HALF_DAY] = Math.max(most[i / HALF_DAY], ring[i]);
    }
    return most;
  }
}
