package org.drysill.reference.dwelling;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * What is taken for a home where the survey does not say.
 *
 * @param roomHeight height of rooms [m]
 * @param setpoint indoor temperature in the heating season [°C]
 * @param loftTemperature temperature of a loft in the heating season [°C]
 * @param cellarTemperature temperature of a cellar without heating in that season [°C]
 * @param extraOccupants people beyond the number of bedrooms
 * @param envelopePerVolumeHouse envelope area by volume of houses [1/m]
 * @param envelopePerVolumeFlat envelope area by volume of flats [1/m]
 * @param assumedLeakageSpread relative spread of a leakage that the survey assumes as one number
 *     [1]
 * @param leakageByAge air leakage by year of construction, oldest first
 * @param leakageOfUnknownAge air leakage of a home of unknown age [1/h]
 */
public record DwellingDefaults(
    @Key(about = "Height of rooms") DefaultLength roomHeight,
    @Key(about = "Indoor temperature in the heating season") DefaultTemperature setpoint,
    @Key(about = "Temperature of a loft in the heating season") DefaultTemperature loftTemperature,
    @Key(about = "Temperature of a cellar without heating in that season")
        DefaultTemperature cellarTemperature,
    @Key(about = "People beyond the number of bedrooms") DefaultNumber extraOccupants,
    @Key(about = "Envelope area by volume of houses, per m") DefaultNumber envelopePerVolumeHouse,
    @Key(about = "Envelope area by volume of flats, per m") DefaultNumber envelopePerVolumeFlat,
    @Key(about = "Relative spread of a leakage that is assumed as one number")
        double assumedLeakageSpread,
    @Key(about = "Air leakage by year of construction, oldest first")
        List<LeakageOfAge> leakageByAge,
    @Key(about = "Air leakage of a home of unknown age") DefaultAirChange leakageOfUnknownAge) {
  /** Copies the list. */
  public DwellingDefaults {
    leakageByAge = List.copyOf(leakageByAge);
  }

  /** The bundled defaults. */
  public static DwellingDefaults bundled() {
    return DataFiles.read("defaults/dwelling.yaml", DwellingDefaults.class);
  }

  /** Leakage of a home by its year of construction. */
  public Optional<LeakageOfAge> leakage(int built) {
    return leakageByAge.stream().filter(age -> built <= age.until()).findFirst();
  }
}
