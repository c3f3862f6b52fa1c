package org.drysill.survey.log;

import java.util.OptionalInt;

/**
 * The air of a log by bins of time, which all have the same width and begin at multiples of it from
 * 1970-01-01T00:00Z. What falls into one bin is its mean weighted by the time for which each
 * reading holds; vapour is reckoned for each reading and then averaged.
 *
 * <p>Bins without a reading are there, and unknown. Nothing says that the log itself had a fixed
 * step.
 */
public final class LoggedSeries {
  private final long firstBin;
  private final int binSeconds;
  private final int size;
  private final Channel[] channels;

  LoggedSeries(long firstBin, int binSeconds, int size, Channel[] channels) {
    this.firstBin = firstBin;
    this.binSeconds = binSeconds;
    this.size = size;
    this.channels = channels;
  }

  /** Number of bins. */
  public int size() {
    return size;
  }

  /** Width of every bin [s]. */
  public int binSeconds() {
    return binSeconds;
  }

  /** When a bin begins [s since 1970-01-01T00:00Z]. */
  public long beginEpochS(int bin) {
    return (firstBin + bin) * binSeconds;
  }

  /** The bin that holds a moment; empty before the first and after the last. */
  public OptionalInt binAt(long epochS) {
    long bin = Math.floorDiv(epochS, (long) binSeconds) - firstBin;
    return bin >= 0 && bin < size ? OptionalInt.of((int) bin) : OptionalInt.empty();
  }

  /** Air temperature [°C]. */
  public Channel temperature() {
    return channels[SeriesBuilder.TEMPERATURE];
  }

  /** Relative humidity [ratio] as the sensor gives it, over liquid water below 0 °C too. */
  public Channel humidity() {
    return channels[SeriesBuilder.HUMIDITY];
  }

  /** Vapour pressure [Pa]; known where temperature and humidity are. */
  public Channel vapourPressure() {
    return channels[SeriesBuilder.VAPOUR_PRESSURE];
  }

  /** Vapour content [kg/m³]; known where temperature and humidity are. */
  public Channel vapourContent() {
    return channels[SeriesBuilder.VAPOUR_CONTENT];
  }

  /** Carbon dioxide [ppm]. */
  public Channel co2() {
    return channels[SeriesBuilder.CO2];
  }
}
