package org.drysill.survey;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * Twelve monthly means, January first.
 *
 * @param temperature mean air temperature of each month
 * @param humidity mean relative humidity of each month, over water
 * @param wind mean wind speed of each month
 * @param source where the figures come from
 */
public record MonthlyClimate(
    @Key(
            about = "Mean air temperature of each month",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -60,
            max = 50,
            size = 12,
            required = true,
            example = "[4.3, 4.8, 6.6, 9.0, 11.8, 14.8, 16.6, 16.5, 14.0, 10.5, 7.1, 4.2]")
        List<Quantity> temperature,
    @Key(
            about = "Mean relative humidity of each month, over water",
            dimension = Dimension.RELATIVE_HUMIDITY,
            unit = "%",
            min = 1,
            max = 100,
            size = 12,
            required = true,
            example = "[86, 83, 80, 76, 76, 76, 76, 77, 80, 84, 87, 87]")
        List<Quantity> humidity,
    @Key(
            about = "Mean wind speed of each month",
            dimension = Dimension.SPEED,
            unit = "m/s",
            min = 0,
            max = 40,
            size = 12,
            example = "[4.5, 4.5, 4.4, 3.9, 3.8, 3.4, 3.3, 3.3, 3.5, 3.8, 3.9, 4.1]")
        List<Quantity> wind,
    @LeftOut
        @Key(about = "Where the figures come from", example = "own weather station 2015 to 2025")
        Optional<String> source) {
  /** Copies the lists. */
  public MonthlyClimate {
    temperature = List.copyOf(temperature);
    humidity = List.copyOf(humidity);
    wind = List.copyOf(wind);
  }
}
