package org.drysill.physics.zones;

import org.drysill.physics.weather.HourlyYear;

/** Vapour of zones over a year of hours, by {@link ZoneSteps}. */
public final class HourlyZones {
  /** So much of the year is run before its first hour, so that the stores are filled. */
  private static final int HOURS_BEFORE = 30 * 24;

  private final double[][] content;
  private final double[][] settling;

  private HourlyZones(int zones, int panes) {
    content = new double[zones][HourlyYear.HOURS];
    settling = new double[panes][HourlyYear.HOURS];
  }

  /** What moves the zones from hour to hour; asked anew each hour, it should allocate nothing. */
  public interface Drive {
    /** The state of the air flows. */
    int state(int hour);

    /** Content outdoors [kg/m³]. */
    double outdoor(int hour);

    /** Fills the production of each zone [kg/s]. */
    void production(int hour, double[] zones);

    /** Fills the saturation content of each pane [kg/m³]. */
    void saturation(int hour, double[] panes);
  }

  /**
   * Runs the year from the first of January.
   *
   * @param steps zones whose step is an hour
   * @param drive what moves them
   */
  public static HourlyZones run(ZoneSteps steps, Drive drive) {
    return run(steps, drive, 0);
  }

  /**
   * Runs the year, which is a ring, from one of its hours.
   *
   * @param steps zones whose step is an hour
   * @param drive what moves them
   * @param firstHour the hour of the year to begin at, best in the dry season
   */
  public static HourlyZones run(ZoneSteps steps, Drive drive, int firstHour) {
    HourlyZones year = new HourlyZones(steps.zones(), steps.panes());
    double[] production = new double[steps.zones()];
    double[] saturation = new double[steps.panes()];
    for (int h = -HOURS_BEFORE; h < HourlyYear.HOURS; h++) {
      int hour = Math.floorMod(firstHour + h, HourlyYear.HOURS);
      drive.production(hour, production);
      drive.saturation(hour, saturation);
      steps.step(drive.state(hour), production, drive.outdoor(hour), saturation);
      if (h >= 0) {
        year.note(steps, hour);
      }
    }
    return year;
  }

  /** Content of a zone at an hour [kg/m³], 0 being the first of January. */
  public double content(int zone, int hour) {
    return content[zone][hour];
  }

  /** What settles on a pane at an hour [kg/s]. */
  public double settling(int pane, int hour) {
    return settling[pane][hour];
  }

  /** Mean content of a zone by month [kg/m³]. */
  public double[] monthlyContent(int zone) {
    return HourlyYear.monthlyMeans(content[zone]);
  }

  private void note(ZoneSteps steps, int hour) {
    for (int i = 0; i < content.length; i++) {
      content[i][hour] = steps.content(i);
    }
    for (int p = 0; p < settling.length; p++) {
      settling[p][hour] = steps.settling(p);
    }
  }
}
