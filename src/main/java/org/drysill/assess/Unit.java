package org.drysill.assess;

/** The unit in which a figure is kept; the report converts it to what its reader is used to. */
public enum Unit {
  /** A plain ratio. */
  RATIO("1"),
  /** A share that is spoken of in percent; kept as ratio. */
  PERCENT("1"),
  /** Relative humidity; kept as ratio. */
  RELATIVE_HUMIDITY("1"),
  /** A difference of two percentages, spoken of in percentage points; kept as ratio. */
  PERCENTAGE_POINT("1"),
  /** A number of things. */
  COUNT("1"),
  /** A temperature on the Celsius scale. */
  CELSIUS("°C"),
  /** A difference of temperatures. */
  KELVIN("K"),
  /** Degree-days of a year: differences of temperature, each as long as it lasts. */
  KELVIN_DAYS("K·d"),
  /** Length. */
  METRE("m"),
  /** Area. */
  SQUARE_METRE("m²"),
  /** A small area such as that of a ventilator; kept in m². */
  VENT_AREA("m²"),
  /** Volume. */
  CUBIC_METRE("m³"),
  /** Volume flow of air. */
  AIRFLOW("m³/s"),
  /** Volume flow of air by floor area. */
  AIRFLOW_PER_AREA("m³/(s·m²)"),
  /** Air changes. */
  AIR_CHANGE("1/h"),
  /** Pressure. */
  PASCAL("Pa"),
  /** Vapour by volume of air. */
  VAPOUR_CONTENT("kg/m³"),
  /** A mass of water. */
  KILOGRAM("kg"),
  /** Water by area of a surface. */
  WATER_PER_AREA("kg/m²"),
  /** A small mass of water, such as that of one night; kept in kg. */
  NIGHT_WATER("kg"),
  /** The mould index, 0 to 6. */
  MOULD_INDEX("1"),
  /** Days of a year on which something is so. */
  DAYS_PER_YEAR("d/a"),
  /** A rate of water. */
  MASS_RATE("kg/s"),
  /** Thermal transmittance. */
  U_VALUE("W/(m²·K)"),
  /** Thermal resistance. */
  RESISTANCE("m²·K/W"),
  /** Thermal conductivity. */
  CONDUCTIVITY("W/(m·K)"),
  /** Water within a square metre of an element. */
  WATER_CONTENT("kg/m²"),
  /** Power. */
  WATT("W"),
  /** Heat loss by temperature difference. */
  WATT_PER_KELVIN("W/K"),
  /** Fan power by flow. */
  SPECIFIC_FAN_POWER("W/(m³/s)"),
  /** Energy in a year. */
  KWH_PER_YEAR("kWh/a"),
  /** Carbon dioxide in a year. */
  KG_CO2_PER_YEAR("kg/a"),
  /** A sum of money. */
  MONEY("currency"),
  /** Money in a year. */
  MONEY_PER_YEAR("currency/a"),
  /** A price of energy. */
  ENERGY_PRICE("currency/kWh"),
  /** Time in years. */
  YEARS("a"),
  /** Time in seconds. */
  SECONDS("s"),
  /** Time in hours. */
  HOURS("h"),
  /** Time of a year in hours. */
  HOURS_PER_YEAR("h/a"),
  /** A concentration of CO₂. */
  PPM("ppm");

  private final String symbol;

  Unit(String symbol) {
    this.symbol = symbol;
  }

  /** The symbol of the unit in which values are kept. */
  public String symbol() {
    return symbol;
  }
}
