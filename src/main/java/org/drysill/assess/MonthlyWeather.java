package org.drysill.assess;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.reference.climate.HourlyWeather;
import org.drysill.reference.climate.HourlyWeather.Hour;

/**
 * A weather file by month.
 *
 * @param fileName the file's name as the user gave it
 * @param place city and country of its header
 * @param supersaturated how many records had a relative humidity above 100 % and were taken as 100
 * @param months twelve months, January first
 * @param year the same hour by hour
 * @param filled how many of those hours the file lacked
 */
public record MonthlyWeather(
    String fileName,
    String place,
    int supersaturated,
    List<Means> months,
    HourlyYear year,
    int filled) {
  /** Copies the list. */
  public MonthlyWeather {
    months = List.copyOf(months);
  }

  /** Takes the means of a file that covers all months. */
  public static MonthlyWeather of(HourlyWeather weather) {
    HoursOfFile hours = HoursOfFile.of(weather);
    return new MonthlyWeather(
        weather.fileName(),
        weather.place(),
        weather.supersaturated(),
        Arrays.stream(Month.values()).map(month -> Means.of(month, weather.records())).toList(),
        hours.year(),
        hours.filled());
  }

  /**
   * Means of a month over the records that have both temperature and humidity.
   *
   * @param temperature mean air temperature [°C]
   * @param vapourPressure mean vapour pressure [Pa]
   * @param wind mean wind speed [m/s], where the file has it
   */
  public record Means(double temperature, double vapourPressure, Optional<Double> wind) {
    /**
     * That vapour pressure by the saturation pressure over water at the mean temperature, as a
     * ratio. The mean of the hourly humidities would give another vapour pressure: warm hours are
     * dry ones.
     */
    public double relativeHumidity() {
      return Math.min(
          1, vapourPressure / Iso13788Vapour.saturationPressureOverWaterPa(temperature));
    }

    private static Means of(Month month, List<Hour> records) {
      List<Hour> usable =
          records.stream()
              .filter(hour -> hour.month() == month.getValue())
              .filter(Hour::usable)
              .toList();
      return new Means(
          usable.stream()
              .mapToDouble(hour -> hour.temperature().orElseThrow())
              .average()
              .orElseThrow(),
          usable.stream().mapToDouble(MonthlyWeather::vapourPressure).average().orElseThrow(),
          wind(usable));
    }

    private static Optional<Double> wind(List<Hour> records) {
      OptionalDouble mean =
          records.stream().flatMapToDouble(hour -> hour.wind().stream()).average();
      return mean.isPresent() ? Optional.of(mean.getAsDouble()) : Optional.empty();
    }
  }

  /** Vapour pressure of a usable record [Pa]. */
  static double vapourPressure(Hour hour) {
    double saturation =
        Iso13788Vapour.saturationPressureOverWaterPa(hour.temperature().orElseThrow());
    return hour.relativeHumidity().isPresent()
        ? hour.relativeHumidity().getAsDouble() * saturation
        : Math.min(
            saturation,
            Iso13788Vapour.saturationPressureOverWaterPa(hour.dewPoint().orElseThrow()));
  }
}
