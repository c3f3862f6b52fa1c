package org.drysill.reference.climate;

import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Problem;

/**
 * What reading a weather file gave.
 *
 * @param weather the weather; empty when there was at least one error
 * @param problems what is wrong, in the order of the file
 */
public record WeatherReading(Optional<HourlyWeather> weather, List<Problem> problems) {
  /** Copies the list. */
  public WeatherReading {
    problems = List.copyOf(problems);
  }
}
