package org.drysill.assess;

import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.physics.weather.SyntheticYear;
import org.drysill.reference.surfaces.MadeWeather;

/**
 * The outdoor air of a home hour by hour.
 *
 * @param year temperature and vapour pressure of each hour
 * @param warmestMonth 0 for January
 * @param made true where the hours were made from months and are no weather that was
 */
public record OutdoorHours(HourlyYear year, int warmestMonth, boolean made) {
  /** The hours of the climate's own file, else hours made from its months. */
  public static OutdoorHours of(OutdoorClimate climate, MadeWeather how) {
    int warmest = warmest(climate);
    return climate
        .hourly()
        .map(year -> new OutdoorHours(year, warmest, false))
        .orElseGet(() -> new OutdoorHours(made(climate, how, warmest), warmest, true));
  }

  private static HourlyYear made(OutdoorClimate climate, MadeWeather how, int warmest) {
    double[] celsius =
        climate.months().stream().mapToDouble(OutdoorClimate.Month::temperature).toArray();
    double[] vapour = climate.months().stream().mapToDouble(OutdoorHours::vapourPa).toArray();
    return new SyntheticYear(
            how.winterSwing().likely(),
            how.summerSwing().likely(),
            how.winterSpread().likely(),
            how.summerSpread().likely(),
            how.persistence().likely(),
            Math.round(how.seed().likely()))
        .of(celsius, vapour, warmest);
  }

  /** A climate's humidity is over water; no outdoor air holds more than saturation over ice. */
  private static double vapourPa(OutdoorClimate.Month month) {
    double overWater = Iso13788Vapour.saturationPressureOverWaterPa(month.temperature());
    return Math.min(
        month.relativeHumidity().likely() * overWater,
        Iso13788Vapour.saturationPressurePa(month.temperature()));
  }

  private static int warmest(OutdoorClimate climate) {
    int warmest = 0;
    for (int m = 1; m < climate.months().size(); m++) {
      if (climate.months().get(m).temperature() > climate.months().get(warmest).temperature()) {
        warmest = m;
      }
    }
    return warmest;
  }
}
