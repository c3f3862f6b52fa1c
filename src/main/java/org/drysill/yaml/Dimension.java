package org.drysill.yaml;

/**
 * A kind of quantity, with the unit in which values are kept after reading.
 *
 * <p>The spellings that each one understands are in {@code Units}.
 */
public enum Dimension {
  /** A plain number without unit. */
  NUMBER("1"),
  /** A ratio kept as such; {@code 62 %} and {@code 0.62} are the same. */
  RATIO("1"),
  /** A percentage kept as ratio; the bare number {@code 85} means 85 %. */
  PERCENT("1"),
  /** Relative humidity, kept as ratio; the bare number {@code 64} means 64 %. */
  RELATIVE_HUMIDITY("1"),
  /** A temperature on a scale, kept in °C. */
  TEMPERATURE("°C"),
  /** A difference of temperatures, kept in K. */
  TEMPERATURE_DIFFERENCE("K"),
  /** A length, kept in m. */
  LENGTH("m"),
  /** An area, kept in m². */
  AREA("m²"),
  /** A volume, kept in m³. */
  VOLUME("m³"),
  /** A volume flow of air, kept in m³/s. */
  AIRFLOW("m³/s"),
  /** Air changes, kept per hour as the trade does. */
  AIR_CHANGE("1/h"),
  /** Air permeability at 50 Pa, kept in m³/(h·m²) as the trade does. */
  AIR_PERMEABILITY("m³/(h·m²)"),
  /** Electric or thermal power, kept in W. */
  POWER("W"),
  /** A rate of mass, kept in kg/s. */
  MASS_RATE("kg/s"),
  /** A concentration of CO₂, kept in ppm. */
  CONCENTRATION("ppm"),
  /** A plane angle, kept in degrees. */
  ANGLE("°"),
  /** Hours of a day, kept in h/d. */
  HOURS_PER_DAY("h/d"),
  /** A time in years. */
  YEARS("a"),
  /** A time in minutes or seconds, kept in s. */
  DURATION("s"),
  /** A sum of money in the currency of the survey. */
  MONEY("currency"),
  /** A price of energy, kept in currency per kWh. */
  ENERGY_PRICE("currency/kWh"),
  /** Thermal transmittance, kept in W/(m²·K). */
  U_VALUE("W/(m²·K)"),
  /** Thermal conductivity, kept in W/(m·K). */
  CONDUCTIVITY("W/(m·K)"),
  /** Thermal resistance, kept in m²·K/W. */
  RESISTANCE("m²·K/W"),
  /** A pressure or pressure difference, kept in Pa. */
  PRESSURE("Pa"),
  /** A speed, kept in m/s. */
  SPEED("m/s");

  private final String kept;

  Dimension(String kept) {
    this.kept = kept;
  }

  /** The unit in which values are kept. */
  public String keptUnit() {
    return kept;
  }
}
