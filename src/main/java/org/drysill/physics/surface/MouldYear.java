package org.drysill.physics.surface;

import java.util.OptionalInt;
import org.drysill.physics.Bounds;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.mould.MouldIndex;
import org.drysill.physics.mould.MouldSensitivity;
import org.drysill.physics.weather.HourlyYear;

/**
 * A surface over a year of hours, clean at its beginning.
 *
 * <p>Tsi = Te + f·(Ti − Te); the relative humidity at it is that of the indoor vapour pressure by
 * saturation at Tsi, over ice below 0 °C.
 *
 * @param moistHours hours in which the air at it is at or above a limit
 * @param wetHours hours in which it is at or below the dew point
 * @param peak highest mould index of the year
 * @param peakHour hour of the year at which it is first reached, 0 being the first of January
 * @param begins hour at which the index first reaches 1, seen under a microscope; empty if never
 * @param visible hour at which it first reaches 3, seen by eye; empty if never
 */
public record MouldYear(
    int moistHours,
    int wetHours,
    double peak,
    int peakHour,
    OptionalInt begins,
    OptionalInt visible) {
  private static final double MICROSCOPIC = 1;
  private static final double VISIBLE = 3;

  /**
   * How sensitive a surface is, and when the year begins for it.
   *
   * @param sensitivity its class
   * @param decline Cmat, how readily an index goes back in dry spells, 0 to 1
   * @param moistFrom relative humidity [ratio] from which an hour counts as moist
   * @param firstHour the hour of the year at which the reckoning begins, best in the dry season
   */
  public record Surface(
      MouldSensitivity sensitivity, double decline, double moistFrom, int firstHour) {
    /** Refuses what is no share and no hour. */
    public Surface {
      Bounds.inside("decline factor", decline, 0, 1);
      Bounds.inside("limit of moist hours", moistFrom, 0, 1);
      Bounds.inside("first hour", firstHour, 0, HourlyYear.HOURS - 1);
    }
  }

  /**
   * Reckons the year.
   *
   * @param factor temperature factor f, 0 to 1
   */
  public static MouldYear of(double factor, HourlyAir air, Surface surface) {
    Bounds.inside("temperature factor", factor, 0, 1);
    Count count = new Count();
    MouldIndex index = MouldIndex.CLEAN;
    for (int i = 0; i < HourlyYear.HOURS; i++) {
      int hour = (surface.firstHour() + i) % HourlyYear.HOURS;
      double celsius = air.surfaceCelsius(factor, hour);
      double humidity = air.indoorPa(hour) / Iso13788Vapour.saturationPressurePa(celsius);
      index = index.after(celsius, 100 * humidity, surface.sensitivity(), surface.decline());
      count.take(hour, humidity, surface.moistFrom(), index.value());
    }
    return count.year();
  }

  private static final class Count {
    private int moist;
    private int wet;
    private double peak;
    private int peakHour;
    private OptionalInt begins = OptionalInt.empty();
    private OptionalInt visible = OptionalInt.empty();

    void take(int hour, double humidity, double moistFrom, double index) {
      moist += humidity >= moistFrom ? 1 : 0;
      wet += humidity >= 1 ? 1 : 0;
      begins = first(begins, hour, index, MICROSCOPIC);
      visible = first(visible, hour, index, VISIBLE);
      if (index > peak) {
        peak = index;
        peakHour = hour;
      }
    }

    private static OptionalInt first(OptionalInt before, int hour, double index, double level) {
      return before.isEmpty() && index >= level ? OptionalInt.of(hour) : before;
    }

    MouldYear year() {
      return new MouldYear(moist, wet, peak, peakHour, begins, visible);
    }
  }
}
