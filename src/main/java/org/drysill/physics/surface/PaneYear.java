package org.drysill.physics.surface;

import org.drysill.physics.Bounds;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.weather.HourlyYear;

/**
 * Water on a pane over a year of hours, dry at its beginning.
 *
 * <pre>
 * w(h) = w(h−1) + β·(pi − ps(Tsi))·3600, never below 0; what exceeds the most that clings runs off
 * </pre>
 *
 * <p>β by {@link GlassCondensate}. What settles is what evaporates, runs off or is left. The warmth
 * that condensing gives to the pane and the drying of the room are left out, so it is an upper
 * bound.
 *
 * @param wetMornings days on which the pane carries at least the given film at the given hour
 * @param runningNights nights in which water runs off
 * @param wetHours hours in which water settles
 * @param worstNightKgM2 the most that settles from one noon to the next [kg/m²]
 * @param settledKgM2 water that settles in the year [kg/m²]
 * @param evaporatedKgM2 water that goes back into the room [kg/m²]
 * @param ranOffKgM2 water that runs off [kg/m²]
 * @param leftKgM2 water on the pane at the end [kg/m²]
 */
public record PaneYear(
    int wetMornings,
    int runningNights,
    int wetHours,
    double worstNightKgM2,
    double settledKgM2,
    double evaporatedKgM2,
    double ranOffKgM2,
    double leftKgM2) {
  private static final int HOURS_PER_DAY = 24;
  private static final int NOON = 12;
  private static final double SECONDS_PER_HOUR = 3600;

  /**
   * When a pane counts as wet.
   *
   * @param filmCoefficient hc, convective coefficient [W/(m²·K)]
   * @param visibleKgM2 film that is seen [kg/m²]
   * @param clingsKgM2 the most that clings before it runs off [kg/m²]
   * @param morningHour the hour of the day at which people look, 0 to 23
   * @param firstHour the hour of the year at which the reckoning begins, best in the dry season
   */
  public record Pane(
      double filmCoefficient,
      double visibleKgM2,
      double clingsKgM2,
      int morningHour,
      int firstHour) {
    /** Refuses what is no film and no hour. */
    public Pane {
      Bounds.atLeast("convective coefficient [W/(m²·K)]", filmCoefficient, 0);
      Bounds.above("visible film [kg/m²]", visibleKgM2, 0);
      Bounds.atLeast("film that clings [kg/m²]", clingsKgM2, visibleKgM2);
      Bounds.inside("morning hour", morningHour, 0, HOURS_PER_DAY - 1);
      Bounds.inside("first hour", firstHour, 0, HourlyYear.HOURS - 1);
    }
  }

  /**
   * Reckons the year.
   *
   * @param factor temperature factor f of the pane, 0 to 1
   */
  public static PaneYear of(double factor, HourlyAir air, Pane pane) {
    Bounds.inside("temperature factor", factor, 0, 1);
    Film film = new Film(pane);
    double transfer =
        GlassCondensate.transferCoefficient(pane.filmCoefficient()) * SECONDS_PER_HOUR;
    for (int i = 0; i < HourlyYear.HOURS; i++) {
      int hour = (pane.firstHour() + i) % HourlyYear.HOURS;
      double saturation = Iso13788Vapour.saturationPressurePa(air.surfaceCelsius(factor, hour));
      film.hour(hour % HOURS_PER_DAY, transfer * (air.indoorPa(hour) - saturation));
    }
    return film.year();
  }

  private static final class Film {
    private final Pane pane;
    private double water;
    private double night;
    private double worst;
    private double settled;
    private double evaporated;
    private double ranOff;
    private boolean runs;
    private int mornings;
    private int nights;
    private int hours;

    Film(Pane pane) {
      this.pane = pane;
    }

    void hour(int ofDay, double gain) {
      if (ofDay == NOON) {
        closeNight();
      }
      if (gain > 0) {
        settle(gain);
      } else {
        double lost = Math.min(water, -gain);
        water -= lost;
        evaporated += lost;
      }
      if (ofDay == pane.morningHour() && water >= pane.visibleKgM2()) {
        mornings++;
      }
    }

    private void settle(double gain) {
      hours++;
      settled += gain;
      night += gain;
      water += gain;
      double over = water - pane.clingsKgM2();
      if (over > 0) {
        water = pane.clingsKgM2();
        ranOff += over;
        runs = true;
      }
    }

    private void closeNight() {
      worst = Math.max(worst, night);
      nights += runs ? 1 : 0;
      night = 0;
      runs = false;
    }

    PaneYear year() {
      closeNight();
      return new PaneYear(mornings, nights, hours, worst, settled, evaporated, ranOff, water);
    }
  }
}
