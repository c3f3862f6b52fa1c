package org.drysill.report.json;

import org.drysill.assess.Unit;

/**
 * The unit in which the results file gives a figure.
 *
 * @param suffix what the key ends with, such as {@code l_s}; empty for plain numbers and money
 * @param words the unit as people write it
 * @param factor by what the kept value is multiplied
 */
record JsonUnit(String suffix, String words, double factor) {
  private static final double SECONDS_PER_DAY = 86_400;

  static JsonUnit of(Unit unit) {
    return switch (unit) {
      case RATIO -> new JsonUnit("", "a plain ratio", 1);
      case MOULD_INDEX -> new JsonUnit("", "the mould index, 0 to 6", 1);
      case COUNT -> new JsonUnit("", "a count", 1);
      case MONEY -> new JsonUnit("", "the currency of the prices", 1);
      case MONEY_PER_YEAR -> new JsonUnit("", "the currency of the prices a year", 1);
      case PERCENT, RELATIVE_HUMIDITY -> new JsonUnit("percent", "percent", 100);
      case PERCENTAGE_POINT -> new JsonUnit("points", "percentage points", 100);
      case CELSIUS -> new JsonUnit("c", "°C", 1);
      case KELVIN -> new JsonUnit("k", "K", 1);
      case METRE -> new JsonUnit("m", "m", 1);
      case SQUARE_METRE -> new JsonUnit("m2", "m²", 1);
      case VENT_AREA -> new JsonUnit("mm2", "mm²", 1e6);
      case CUBIC_METRE -> new JsonUnit("m3", "m³", 1);
      case AIRFLOW -> new JsonUnit("l_s", "l/s", 1000);
      case AIRFLOW_PER_AREA -> new JsonUnit("l_s_m2", "l/s by m² of floor", 1000);
      case AIR_CHANGE -> new JsonUnit("ach", "air changes an hour", 1);
      case PASCAL -> new JsonUnit("pa", "Pa", 1);
      case VAPOUR_CONTENT -> new JsonUnit("g_m3", "g/m³", 1000);
      case KILOGRAM -> new JsonUnit("kg", "kg", 1);
      case WATER_PER_AREA -> new JsonUnit("g_m2", "g/m²", 1000);
      case NIGHT_WATER -> new JsonUnit("g", "g", 1000);
      case DAYS_PER_YEAR -> new JsonUnit("days_year", "days a year", 1);
      case MASS_RATE -> new JsonUnit("kg_day", "kg a day", SECONDS_PER_DAY);
      case U_VALUE -> new JsonUnit("w_m2k", "W/(m²·K)", 1);
      case RESISTANCE -> new JsonUnit("m2k_w", "m²·K/W", 1);
      case CONDUCTIVITY -> new JsonUnit("w_mk", "W/(m·K)", 1);
      case WATER_CONTENT -> new JsonUnit("kg_m2", "kg/m²", 1);
      case WATT -> new JsonUnit("w", "W", 1);
      case WATT_PER_KELVIN -> new JsonUnit("w_k", "W/K", 1);
      case SPECIFIC_FAN_POWER -> new JsonUnit("w_per_l_s", "W by l/s", 1e-3);
      case KWH_PER_YEAR -> new JsonUnit("kwh_year", "kWh a year", 1);
      case KG_CO2_PER_YEAR -> new JsonUnit("kg_co2_year", "kg of CO₂ a year", 1);
      case ENERGY_PRICE -> new JsonUnit("per_kwh", "the currency of the prices by kWh", 1);
      case KELVIN_DAYS -> new JsonUnit("k_days", "K·d", 1);
      case YEARS -> new JsonUnit("years", "years", 1);
      case SECONDS -> new JsonUnit("s", "s", 1);
      case HOURS -> new JsonUnit("hours", "hours", 1);
      case HOURS_PER_YEAR -> new JsonUnit("hours_year", "hours a year", 1);
      case PPM -> new JsonUnit("ppm", "ppm", 1);
    };
  }

  /** A key with its unit, which is not said twice. */
  String key(String plain) {
    return suffix.isEmpty() || plain.endsWith("_" + suffix) ? plain : plain + "_" + suffix;
  }
}
