package org.drysill.reference.surfaces;

import org.drysill.reference.DataFiles;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What the assessment of surfaces takes for granted where the survey is silent.
 *
 * @param refusedBelow difference indoors to outdoors [K] below which a reading tells nothing
 * @param weakBelow difference [K] below which a reading is weak
 * @param statedFactorError error of a stated temperature factor, plus or minus [1]
 * @param statedUValueError error of a stated U-value, plus or minus, share of it [1]
 * @param leastDifferenceForRequiredFactor difference [K] below which no factor is required
 * @param freeRunningRise indoors above outdoors without heating [K]
 * @param coldNightDrop cold nights below the month's mean [K]
 * @param coldNightHumidity relative humidity outdoors on cold nights [1]
 * @param coldestWeather outdoor temperature below which no weather is named [°C]
 * @param warmestForVapour outdoor temperature above which an excess is not carried to other months
 *     [°C]
 * @param fallbackClass humidity class taken without readings
 * @param unheatedClass humidity class that bounds rooms without heating or readings
 * @param condensateHours hours of a night during which a pane is wet [h]
 * @param paneFilm convective film coefficient of a pane [W/(m²·K)]
 */
public record SurfaceDefaults(
    @Key(about = "Difference below which a reading tells nothing, K") Sourced refusedBelow,
    @Key(about = "Difference below which a reading is weak, K") Sourced weakBelow,
    @Key(about = "Error of a stated temperature factor, ratio") Sourced statedFactorError,
    @Key(about = "Error of a stated U-value, share") Sourced statedUValueError,
    @Key(about = "Difference below which no factor is required, K")
        Sourced leastDifferenceForRequiredFactor,
    @Key(about = "Indoors above outdoors without heating, K") Sourced freeRunningRise,
    @Key(about = "Cold nights below the month's mean, K") Sourced coldNightDrop,
    @Key(about = "Relative humidity outdoors on cold nights, ratio") Sourced coldNightHumidity,
    @Key(about = "Outdoor temperature below which no weather is named, °C") Sourced coldestWeather,
    @Key(about = "Outdoor temperature above which an excess is not carried to other months, °C")
        Sourced warmestForVapour,
    @Key(about = "Humidity class taken without readings") Sourced fallbackClass,
    @Key(about = "Humidity class that bounds rooms without heating or readings")
        Sourced unheatedClass,
    @Key(about = "Hours of a night during which a pane is wet, h") Sourced condensateHours,
    @Key(about = "Convective film coefficient of a pane, W/(m²·K)") Sourced paneFilm) {
  /** Reads the bundled values. */
  public static SurfaceDefaults bundled() {
    return DataFiles.read("defaults/surfaces.yaml", SurfaceDefaults.class);
  }
}
