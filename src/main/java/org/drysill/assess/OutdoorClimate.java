package org.drysill.assess;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.reference.Citation;

/**
 * The outdoor climate of a home by month.
 *
 * @param name what it is called in the report
 * @param months twelve months, January first
 * @param basis measured for the user's own table, published for a reference climate, assumed where
 *     the survey names none
 * @param sources where temperature and humidity come from
 * @param hourly the hours of the user's own weather file
 * @param note what else the reader should know, such as that humidity is estimated
 */
public record OutdoorClimate(
    String name,
    List<Month> months,
    Optional<HourlyYear> hourly,
    Basis basis,
    List<Citation> sources,
    Optional<String> note) {
  /** Copies the lists and refuses anything but twelve months. */
  public OutdoorClimate {
    months = List.copyOf(months);
    sources = List.copyOf(sources);
    if (months.size() != 12) {
      throw new IllegalArgumentException("expected 12 months but was " + months.size());
    }
  }

  /** A climate of which only months are known. */
  public OutdoorClimate(
      String name, List<Month> months, Basis basis, List<Citation> sources, Optional<String> note) {
    this(name, months, Optional.empty(), basis, sources, note);
  }

  /**
   * Means of a month.
   *
   * @param number 1 for January to 12
   * @param days number of days
   * @param temperature mean air temperature [°C]
   * @param relativeHumidity mean relative humidity over water, as a ratio, with its uncertainty
   * @param windMs mean wind speed at the weather station [m/s], where known
   */
  public record Month(
      int number, int days, double temperature, Range relativeHumidity, Optional<Double> windMs) {
    /** The same air in another month. */
    Month as(int another, int itsDays) {
      return new Month(another, itsDays, temperature, relativeHumidity, windMs);
    }
  }
}
