package org.drysill.assess.logs;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.function.IntPredicate;
import org.drysill.survey.log.Channel;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LoggedSeries;

/**
 * The air of a logged room and the outdoor air of the same time, by even steps. It stands in no
 * results file: it is the log itself again. What is unknown is NaN.
 */
public final class Trace {
  private final Grid grid;
  private final ZoneId zone;
  private final Resampled celsius;
  private final Resampled humidity;
  private final Resampled pressure;
  private final Resampled content;
  private final Resampled ppm;
  private final OutdoorSteps outdoor;

  private Trace(LoggedSeries series, ZoneId zone, Grid grid, OutdoorSteps outdoor) {
    this.grid = grid;
    this.zone = zone;
    this.celsius = take(series, series.temperature(), grid);
    this.humidity = take(series, series.humidity(), grid);
    this.pressure = take(series, series.vapourPressure(), grid);
    this.content = take(series, series.vapourContent(), grid);
    this.ppm = take(series, series.co2(), grid);
    this.outdoor = outdoor;
  }

  /** The trace of a room's log against outdoor air on the same steps. */
  static Trace of(LogContent room, Grid grid, OutdoorSteps outdoor) {
    return new Trace(room.series(), room.layout().zone(), grid, outdoor);
  }

  private static Resampled take(LoggedSeries series, Channel channel, Grid grid) {
    return Resampled.of(series, channel, grid);
  }

  /** Number of steps. */
  public int size() {
    return grid.size();
  }

  /** Width of every step [s]. */
  public int stepS() {
    return grid.stepS();
  }

  /** When a step begins [s since 1970-01-01T00:00Z]. */
  public long beginEpochS(int step) {
    return grid.beginEpochS(step);
  }

  /** When a step begins on the clock of the place. */
  public ZonedDateTime begin(int step) {
    return Instant.ofEpochSecond(beginEpochS(step)).atZone(zone);
  }

  /** Temperature [°C]. */
  public double celsius(int step) {
    return celsius.mean(step);
  }

  /** Relative humidity [ratio]. */
  public double humidity(int step) {
    return humidity.mean(step);
  }

  /** Vapour pressure [Pa]. */
  public double pressurePa(int step) {
    return pressure.mean(step);
  }

  /** Vapour content [kg/m³]. */
  public double contentKgM3(int step) {
    return content.mean(step);
  }

  /** CO₂ [ppm]. */
  public double ppm(int step) {
    return ppm.mean(step);
  }

  /** Outdoor temperature [°C]. */
  public double outdoorCelsius(int step) {
    return outdoor.celsius(step);
  }

  /** Outdoor vapour pressure [Pa]. */
  public double outdoorPressurePa(int step) {
    return outdoor.pressurePa(step);
  }

  /** Outdoor vapour content [kg/m³]. */
  public double outdoorContentKgM3(int step) {
    return outdoor.contentKgM3(step);
  }

  /** Outdoor CO₂ [ppm]; NaN unless it was logged. */
  public double outdoorPpm(int step) {
    return outdoor.ppm(step);
  }

  /** Vapour over outdoors [kg/m³], each side at its own temperature. */
  public double excessKgM3(int step) {
    return contentKgM3(step) - outdoorContentKgM3(step);
  }

  /** Vapour pressure over outdoors [Pa]. */
  public double excessPa(int step) {
    return pressurePa(step) - outdoorPressurePa(step);
  }

  /** Time of a step for which temperature and humidity hold [s]. */
  public double seconds(int step) {
    return pressure.seconds(step);
  }

  /** Whether the room's air and the outdoor air of a step are both known. */
  public boolean isPaired(int step) {
    return seconds(step) > 0 && !Double.isNaN(outdoorPressurePa(step));
  }

  /** Time with readings in the steps that a condition picks [h]. */
  public double hours(IntPredicate where) {
    double seconds = 0;
    for (int i = 0; i < size(); i++) {
      if (seconds(i) > 0 && where.test(i)) {
        seconds += seconds(i);
      }
    }
    return seconds / 3600;
  }
}
