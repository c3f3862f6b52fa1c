package org.drysill.report.words;

import org.drysill.assess.Unit;

/**
 * How a unit is printed: {@code printed = kept × factor + offset}.
 *
 * @param symbol what stands after the number; empty for a plain number
 * @param factor exact where the units' definitions are
 * @param offset for temperatures on a scale
 * @param decimals how fine it is printed
 */
record PrintedUnit(String symbol, double factor, double offset, Decimals decimals) {
  // Definitions: international foot 0.3048 m and pound 0.45359237 kg (1959), inch 25.4 mm.
  private static final double FOOT = 0.3048;
  private static final double CFM = FOOT * FOOT * FOOT / 60;
  private static final double POUND = 0.45359237;
  private static final double HOUR = 3600;
  private static final double DAY = 24 * HOUR;
  // W/(m²·K) to Btu(IT)/(h·ft²·°F): 1055.05585262 J, 3600 s, 5/9 K.
  private static final double U_CUSTOMARY = HOUR * FOOT * FOOT * 5 / 9 / 1055.05585262;

  static PrintedUnit of(Unit unit, UnitSystem system) {
    return switch (system) {
      case METRIC -> metric(unit);
      case METRIC_HOURLY -> hourly(unit);
      case CUSTOMARY -> customary(unit);
    };
  }

  double convert(double kept) {
    return kept * factor + offset;
  }

  private static PrintedUnit hourly(Unit unit) {
    return switch (unit) {
      case AIRFLOW -> new PrintedUnit("m³/h", HOUR, 0, Decimals.BY_SIZE);
      case AIRFLOW_PER_AREA -> new PrintedUnit("m³/h per m²", HOUR, 0, Decimals.TWO);
      case SPECIFIC_FAN_POWER -> new PrintedUnit("W/(m³/h)", 1 / HOUR, 0, Decimals.TWO);
      default -> metric(unit);
    };
  }

  private static PrintedUnit customary(Unit unit) {
    return switch (unit) {
      case CELSIUS -> new PrintedUnit("°F", 1.8, 32, Decimals.WHOLE);
      case KELVIN -> new PrintedUnit("°F", 1.8, 0, Decimals.ONE);
      case KELVIN_DAYS -> new PrintedUnit("°F·days", 1.8, 0, Decimals.WHOLE);
      case METRE -> new PrintedUnit("ft", 1 / FOOT, 0, Decimals.ONE);
      case SQUARE_METRE -> new PrintedUnit("ft²", 1 / (FOOT * FOOT), 0, Decimals.BY_SIZE);
      case VENT_AREA -> new PrintedUnit("in²", 144 / (FOOT * FOOT), 0, Decimals.ONE);
      case CUBIC_METRE -> new PrintedUnit("ft³", 1 / (FOOT * FOOT * FOOT), 0, Decimals.WHOLE);
      case AIRFLOW -> new PrintedUnit("cfm", 1 / CFM, 0, Decimals.WHOLE);
      case AIRFLOW_PER_AREA -> new PrintedUnit("cfm/ft²", FOOT * FOOT / CFM, 0, Decimals.THREE);
      case KILOGRAM -> new PrintedUnit("lb", 1 / POUND, 0, Decimals.BY_SIZE);
      case MASS_RATE -> new PrintedUnit("lb/day", DAY / POUND, 0, Decimals.BY_SIZE);
      case U_VALUE -> new PrintedUnit("Btu/(h·ft²·°F)", U_CUSTOMARY, 0, Decimals.TWO);
      case RESISTANCE -> new PrintedUnit("h·ft²·°F/Btu", 1 / U_CUSTOMARY, 0, Decimals.TWO);
      case CONDUCTIVITY -> new PrintedUnit("Btu/(h·ft·°F)", U_CUSTOMARY / FOOT, 0, Decimals.THREE);
      case WATER_CONTENT -> new PrintedUnit("oz/ft²", 16 / POUND * FOOT * FOOT, 0, Decimals.TWO);
      case SPECIFIC_FAN_POWER -> new PrintedUnit("W/cfm", CFM, 0, Decimals.TWO);
      case KG_CO2_PER_YEAR -> new PrintedUnit("lb/year", 1 / POUND, 0, Decimals.WHOLE);
      case RATIO,
          PERCENT,
          RELATIVE_HUMIDITY,
          PERCENTAGE_POINT,
          COUNT,
          AIR_CHANGE,
          PASCAL,
          VAPOUR_CONTENT,
          WATER_PER_AREA,
          NIGHT_WATER,
          MOULD_INDEX,
          DAYS_PER_YEAR,
          WATT,
          WATT_PER_KELVIN,
          KWH_PER_YEAR,
          MONEY,
          MONEY_PER_YEAR,
          ENERGY_PRICE,
          YEARS,
          SECONDS,
          HOURS,
          HOURS_PER_YEAR,
          PPM ->
          metric(unit);
    };
  }

  private static PrintedUnit metric(Unit unit) {
    return switch (unit) {
      case RATIO -> new PrintedUnit("", 1, 0, Decimals.TWO);
      case PERCENT, RELATIVE_HUMIDITY -> new PrintedUnit("%", 100, 0, Decimals.WHOLE);
      case PERCENTAGE_POINT -> new PrintedUnit("percentage points", 100, 0, Decimals.WHOLE);
      case COUNT -> new PrintedUnit("", 1, 0, Decimals.AS_NEEDED);
      case CELSIUS -> new PrintedUnit("°C", 1, 0, Decimals.ONE);
      case KELVIN -> new PrintedUnit("K", 1, 0, Decimals.ONE);
      case KELVIN_DAYS -> new PrintedUnit("K·days", 1, 0, Decimals.WHOLE);
      case METRE -> new PrintedUnit("m", 1, 0, Decimals.TWO);
      case SQUARE_METRE -> new PrintedUnit("m²", 1, 0, Decimals.BY_SIZE);
      case VENT_AREA -> new PrintedUnit("mm²", 1e6, 0, Decimals.WHOLE);
      case CUBIC_METRE -> new PrintedUnit("m³", 1, 0, Decimals.BY_SIZE);
      case AIRFLOW -> new PrintedUnit("l/s", 1000, 0, Decimals.BY_SIZE);
      case AIRFLOW_PER_AREA -> new PrintedUnit("l/s per m²", 1000, 0, Decimals.TWO);
      case AIR_CHANGE -> new PrintedUnit("ach", 1, 0, Decimals.AIR_CHANGE);
      case PASCAL -> new PrintedUnit("Pa", 1, 0, Decimals.WHOLE);
      case VAPOUR_CONTENT -> new PrintedUnit("g/m³", 1000, 0, Decimals.ONE);
      case KILOGRAM -> new PrintedUnit("kg", 1, 0, Decimals.FINE);
      case WATER_PER_AREA -> new PrintedUnit("g/m²", 1000, 0, Decimals.BY_SIZE);
      case NIGHT_WATER -> new PrintedUnit("g", 1000, 0, Decimals.BY_SIZE);
      case MOULD_INDEX -> new PrintedUnit("", 1, 0, Decimals.ONE);
      case DAYS_PER_YEAR -> new PrintedUnit("days a year", 1, 0, Decimals.WHOLE);
      case MASS_RATE -> new PrintedUnit("kg/day", DAY, 0, Decimals.FINE);
      case U_VALUE -> new PrintedUnit("W/(m²·K)", 1, 0, Decimals.TWO);
      case RESISTANCE -> new PrintedUnit("m²·K/W", 1, 0, Decimals.TWO);
      case CONDUCTIVITY -> new PrintedUnit("W/(m·K)", 1, 0, Decimals.THREE);
      case WATER_CONTENT -> new PrintedUnit("g/m²", 1000, 0, Decimals.WHOLE);
      case WATT -> new PrintedUnit("W", 1, 0, Decimals.BY_SIZE);
      case WATT_PER_KELVIN -> new PrintedUnit("W/K", 1, 0, Decimals.FINE);
      case SPECIFIC_FAN_POWER -> new PrintedUnit("W/(l/s)", 0.001, 0, Decimals.TWO);
      case KWH_PER_YEAR -> new PrintedUnit("kWh/year", 1, 0, Decimals.WHOLE);
      case KG_CO2_PER_YEAR -> new PrintedUnit("kg/year", 1, 0, Decimals.WHOLE);
      case MONEY -> new PrintedUnit("", 1, 0, Decimals.WHOLE);
      case MONEY_PER_YEAR -> new PrintedUnit("a year", 1, 0, Decimals.WHOLE);
      case ENERGY_PRICE -> new PrintedUnit("per kWh", 1, 0, Decimals.THREE);
      case YEARS -> new PrintedUnit("years", 1, 0, Decimals.BY_SIZE);
      case SECONDS -> new PrintedUnit("s", 1, 0, Decimals.WHOLE);
      case HOURS -> new PrintedUnit("h", 1, 0, Decimals.WHOLE);
      case HOURS_PER_YEAR -> new PrintedUnit("h/year", 1, 0, Decimals.WHOLE);
      case PPM -> new PrintedUnit("ppm", 1, 0, Decimals.WHOLE);
    };
  }
}
