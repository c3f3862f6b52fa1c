package org.drysill.reference.climate;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A weather file as it stands, in the order of the file. A typical year is stitched from months of
 * several years, so the order of the file is the only one that counts.
 *
 * @param fileName the file's name as the user gave it
 * @param place city and country of its header
 * @param recordsPerHour how many records an hour has
 * @param records the records
 * @param supersaturated how many records had a relative humidity above 100 % and were taken as 100
 */
public record HourlyWeather(
    String fileName, String place, int recordsPerHour, List<Hour> records, int supersaturated) {
  /** Copies the list. */
  public HourlyWeather {
    records = List.copyOf(records);
  }

  /**
   * One record. What the file marks as missing is empty.
   *
   * @param month 1 to 12
   * @param day day of the month
   * @param hour 1 to 24; hour 1 ends at 01:00 standard time
   * @param temperature air temperature [°C]
   * @param dewPoint dew point [°C]
   * @param relativeHumidity relative humidity over water, as a ratio, at most 1
   * @param pressure air pressure at the station [Pa]
   * @param wind wind speed [m/s]
   */
  public record Hour(
      int month,
      int day,
      int hour,
      OptionalDouble temperature,
      OptionalDouble dewPoint,
      OptionalDouble relativeHumidity,
      OptionalDouble pressure,
      OptionalDouble wind) {
    /** True where temperature and vapour are both known. */
    public boolean usable() {
      return temperature.isPresent() && (relativeHumidity.isPresent() || dewPoint.isPresent());
    }
  }
}
