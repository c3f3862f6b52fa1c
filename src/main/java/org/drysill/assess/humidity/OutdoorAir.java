package org.drysill.assess.humidity;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.yaml.Moment;

/**
 * The outdoor air that a room reading is compared with.
 *
 * @param source where it comes from
 * @param said the source in words, such as {@code outdoor reading of 09:40, 25 minutes earlier}
 * @param at when it was read, where it is a reading with a time
 * @param temperature air temperature [°C]
 * @param relativeHumidity relative humidity over water, as a ratio
 * @param vapourPressure partial pressure of the vapour [Pa]
 * @param vapourContent vapour by volume of air [kg/m³]
 */
public record OutdoorAir(
    Source source,
    String said,
    Optional<Moment> at,
    Figure temperature,
    Figure relativeHumidity,
    Figure vapourPressure,
    Figure vapourContent) {

  /** Where outdoor air comes from, the best first. */
  public enum Source {
    /** Temperature and humidity were read outdoors close enough in time. */
    READING,
    /** Temperature was read outdoors; the vapour is that of the climate's month. */
    READING_WITHOUT_HUMIDITY,
    /** Nothing was read outdoors: the mean of the climate's month. */
    CLIMATE_MONTH
  }

  /** True where temperature and humidity were both read at nearly the same time as the room. */
  public boolean simultaneous() {
    return source == Source.READING;
  }
}
