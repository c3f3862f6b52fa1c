package org.drysill.report.json;

import org.drysill.assess.Unit;

/**
 * The unit in which the results file gives a figure.
 *
 * @param suffix what the key ends with, such as {@code l_s}; empty for plain numbers and money
 * @param factor by what the kept value is multiplied
 */
record JsonUnit(String suffix, double factor) {
  private static final double SECONDS_PER_DAY = 86_400;

  static JsonUnit of(Unit unit) {
    return switch (unit) {
      case RATIO, MOULD_INDEX, COUNT, MONEY, MONEY_PER_YEAR -> new JsonUnit("", 1);
      case PERCENT, RELATIVE_HUMIDITY -> new JsonUnit("percent", 100);
      case PERCENTAGE_POINT -> new JsonUnit("points", 100);
      case CELSIUS -> new JsonUnit("c", 1);
      case KELVIN -> new JsonUnit("k", 1);
      case METRE -> new JsonUnit("m", 1);
      case SQUARE_METRE -> new JsonUnit("m2", 1);
      case VENT_AREA -> new JsonUnit("mm2", 1e6);
      case CUBIC_METRE -> new JsonUnit("m3", 1);
      case AIRFLOW -> new JsonUnit("l_s", 1000);
      case AIRFLOW_PER_AREA -> new JsonUnit("l_s_m2", 1000);
      case AIR_CHANGE -> new JsonUnit("ach", 1);
      case PASCAL -> new JsonUnit("pa", 1);
      case VAPOUR_CONTENT -> new JsonUnit("g_m3", 1000);
      case KILOGRAM -> new JsonUnit("kg", 1);
      case WATER_PER_AREA -> new JsonUnit("g_m2", 1000);
      case NIGHT_WATER -> new JsonUnit("g", 1000);
      case DAYS_PER_YEAR -> new JsonUnit("days_year", 1);
      case MASS_RATE -> new JsonUnit("kg_day", SECONDS_PER_DAY);
      case U_VALUE -> new JsonUnit("w_m2k", 1);
      case RESISTANCE -> new JsonUnit("m2k_w", 1);
      case CONDUCTIVITY -> new JsonUnit("w_mk", 1);
      case WATER_CONTENT -> new JsonUnit("kg_m2", 1);
      case WATT -> new JsonUnit("w", 1);
      case WATT_PER_KELVIN -> new JsonUnit("w_k", 1);
      case SPECIFIC_FAN_POWER -> new JsonUnit("w_per_l_s", 1e-3);
      case KWH_PER_YEAR -> new JsonUnit("kwh_year", 1);
      case KG_CO2_PER_YEAR -> new JsonUnit("kg_co2_year", 1);
      case ENERGY_PRICE -> new JsonUnit("per_kwh", 1);
      case YEARS -> new JsonUnit("years", 1);
      case SECONDS -> new JsonUnit("s", 1);
      case HOURS -> new JsonUnit("hours", 1);
      case HOURS_PER_YEAR -> new JsonUnit("hours_year", 1);
      case PPM -> new JsonUnit("ppm", 1);
    };
  }

  /** A key with its unit, which is not said twice. */
  String key(String plain) {
    return suffix.isEmpty() || plain.endsWith("_" + suffix) ? plain : plain + "_" + suffix;
  }
}
