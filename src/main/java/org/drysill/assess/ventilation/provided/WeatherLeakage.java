package org.drysill.assess.ventilation.provided;

import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate.Month;
import org.drysill.physics.flow.LblBasicModel;
import org.drysill.physics.flow.LeakagePowerLaw;
import org.drysill.reference.ventilation.StackAndWind;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.reference.ventilation.WindShelter;

/**
 * Infiltration by warmth and wind as a share of the flow at 50 Pa; the leakage area by the power
 * law, the flow by {@link LblBasicModel}. Both are in proportion to the flow at 50 Pa, so that the
 * share is one of weather, storeys and shelter alone.
 *
 * @param model coefficients of the home
 * @param areaM2 effective leakage area at 4 Pa that goes with 1 m³/s at 50 Pa [m²]
 * @param indoor indoor temperature [°C]
 * @param season the months of the cold season
 */
record WeatherLeakage(LblBasicModel model, double areaM2, double indoor, ColdSeason season) {
  private static final double TEST_PA = 50;

  /** Empty where the climate does not tell the wind of every month. */
  static Optional<WeatherLeakage> of(Home home, VentilationDefaults defaults, WindShelter shelter) {
    boolean windy = home.climate().months().stream().allMatch(m -> m.windMs().isPresent());
    StackAndWind table = defaults.stackAndWind();
    LblBasicModel model =
        new LblBasicModel(table.stackOf(home.storeys()), table.windOf(shelter, home.storeys()));
    double area =
        LeakagePowerLaw.through(1, TEST_PA, table.exponent()).effectiveAreaM2(table.airDensity());
    return windy
        ? Optional.of(
            new WeatherLeakage(
                model, area, home.setpoint().likely(), ColdSeason.of(home.climate(), defaults)))
        : Optional.empty();
  }

  /** Infiltration of a month as a share of the flow at 50 Pa [1]. */
  double share(Month month) {
    return model.flowM3S(areaM2, indoor - month.temperature(), month.windMs().orElseThrow());
  }

  /** The same over the cold season [1]. */
  double coldShare() {
    return season.mean(this::share);
  }
}
