package org.drysill.reference.climate;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A bundled climate: one file below {@code reference/climate}, named as its id.
 *
 * @param id what a survey calls it
 * @param name what the report calls it
 * @param country ISO 3166 code of the country
 * @param latitude north positive, of the weather station
 * @param longitude east positive, of the weather station
 * @param temperature mean air temperature of each month, January first
 * @param humidity mean relative humidity of each month
 * @param humidityOver what a humidity below 0 °C is relative to
 * @param humidityUncertainty plus or minus, in percentage points kept as ratio
 * @param wind mean wind speed of each month at the weather station
 * @param temperatureSource where the temperatures come from
 * @param humiditySource where the humidities come from
 * @param windSource where the wind speeds come from
 * @param note what else the reader should know
 */
public record ReferenceClimate(
    @Key(about = "What a survey calls it", example = "uk-midlands", id = true) String id,
    @Key(about = "What the report calls it", example = "Midlands") String name,
    @Key(about = "ISO 3166 code of the country", example = "GB") String country,
    @Key(
            about = "Latitude of the weather station, north positive",
            dimension = Dimension.ANGLE,
            unit = "deg",
            min = -90,
            max = 90)
        Optional<Quantity> latitude,
    @Key(
            about = "Longitude of the weather station, east positive",
            dimension = Dimension.ANGLE,
            unit = "deg",
            min = -180,
            max = 180)
        Optional<Quantity> longitude,
    @Key(
            about = "Mean air temperature of each month, January first",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -60,
            max = 50,
            required = true,
            size = 12)
        List<Quantity> temperature,
    @Key(
            about = "Mean relative humidity of each month",
            dimension = Dimension.RELATIVE_HUMIDITY,
            unit = "%",
            min = 1,
            max = 100,
            required = true,
            size = 12)
        List<Quantity> humidity,
    @Key(about = "What a humidity below 0 °C is relative to: water or ice", example = "water")
        HumidityOver humidityOver,
    @Key(
            about = "Uncertainty of the humidity, plus or minus, in percentage points",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 30)
        Quantity humidityUncertainty,
    @Key(
            about = "Mean wind speed of each month at the weather station",
            dimension = Dimension.SPEED,
            unit = "m/s",
            min = 0,
            max = 40,
            size = 12)
        List<Quantity> wind,
    @Key(about = "Where the temperatures come from") Citation temperatureSource,
    @Key(about = "Where the humidities come from") Citation humiditySource,
    @Key(about = "Where the wind speeds come from") Optional<Citation> windSource,
    @Key(about = "What else the reader should know") Optional<String> note) {
  /** Copies the lists. */
  public ReferenceClimate {
    temperature = List.copyOf(temperature);
    humidity = List.copyOf(humidity);
    wind = List.copyOf(wind);
  }
}
