package org.drysill.yaml.units;

import org.drysill.yaml.Dimension;

/**
 * The table of units. International foot 0.3048 m, inch 0.0254 m and pound-based units by their
 * exact definitions (international yard and pound agreement, 1959); the British thermal unit is
 * that of the International Table, 1055.05585262 J; an inch of water is taken at 4 °C, 249.08891
 * Pa.
 */
final class UnitTable {
  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;
  private static final double BTU = 1055.05585262;
  private static final double DAY = 86400;

  private UnitTable() {}

  /** Takes the lines of the table. */
  interface Sink {
    void define(Dimension dimension, Symbol symbol, String... spellings);
  }

  static void fill(Sink to) {
    ratios(to);
    temperatures(to);
    sizes(to);
    flows(to);
    rates(to);
    times(to);
    money(to);
    heat(to);
  }

  private static void ratios(Sink to) {
    to.define(Dimension.NUMBER, of("1", 1, 1));
    for (Dimension d :
        new Dimension[] {Dimension.RATIO, Dimension.PERCENT, Dimension.RELATIVE_HUMIDITY}) {
      to.define(d, of("%", 1, 100), "percent", "per cent", "pct");
      to.define(d, of("1", 1, 1), "ratio");
    }
    to.define(Dimension.RELATIVE_HUMIDITY, of("%", 1, 100), "%RH", "RH", "% r.h.", "% rF");
    to.define(Dimension.CONCENTRATION, of("ppm", 1, 1), "ppmv", "ppm CO2");
    to.define(
        Dimension.ANGLE, of("deg", 1, 1), "°", "degree", "degrees", "° N", "° E", "deg N", "deg E");
  }

  private static void temperatures(Sink to) {
    to.define(
        Dimension.TEMPERATURE,
        of("C", 1, 1),
        "°C",
        "degC",
        "deg C",
        "celsius",
        "degrees C",
        "degrees celsius");
    to.define(
        Dimension.TEMPERATURE,
        new Symbol("F", 32, 5, 9),
        "°F",
        "degF",
        "deg F",
        "fahrenheit",
        "degrees F",
        "degrees fahrenheit");
    to.define(Dimension.TEMPERATURE, new Symbol("K", 273.15, 1, 1), "kelvin");
    to.define(
        Dimension.TEMPERATURE_DIFFERENCE,
        of("K", 1, 1),
        "kelvin",
        "C",
        "°C",
        "degC",
        "degrees C",
        "celsius");
    to.define(
        Dimension.TEMPERATURE_DIFFERENCE,
        of("F", 5, 9),
        "°F",
        "degF",
        "degrees F",
        "fahrenheit",
        "°R");
  }

  private static void sizes(Sink to) {
    Dimension length = Dimension.LENGTH;
    to.define(length, of("mm", 1, 1000), "millimetre", "millimetres", "millimeter", "millimeters");
    to.define(length, of("cm", 1, 100), "centimetre", "centimetres", "centimeter", "centimeters");
    to.define(length, of("m", 1, 1), "metre", "metres", "meter", "meters");
    to.define(length, of("in", INCH, 1), "\"", "inch", "inches", "ins", "''");
    to.define(length, of("ft", FOOT, 1), "'", "foot", "feet");
    to.define(length, of("µm", 1, 1e6), "um", "micron", "microns");
    Dimension area = Dimension.AREA;
    to.define(area, of("m2", 1, 1), "sq m", "sqm", "square metres", "square meters", "qm");
    to.define(area, of("mm2", 1, 1e6), "sq mm", "square millimetres", "square millimeters");
    to.define(area, of("cm2", 1, 1e4), "sq cm", "square centimetres", "square centimeters");
    to.define(area, of("ft2", FOOT * FOOT, 1), "sq ft", "sqft", "square feet", "square foot", "sf");
    to.define(area, of("in2", INCH * INCH, 1), "sq in", "square inches");
    Dimension volume = Dimension.VOLUME;
    to.define(volume, of("m3", 1, 1), "cu m", "cubic metres", "cubic meters", "cbm");
    to.define(volume, of("l", 1, 1000), "litre", "litres", "liter", "liters", "dm3");
    to.define(volume, of("ft3", FOOT * FOOT * FOOT, 1), "cu ft", "cubic feet", "cf");
  }

  private static void flows(Sink to) {
    double cubicFoot = FOOT * FOOT * FOOT;
    Dimension flow = Dimension.AIRFLOW;
    to.define(
        flow,
        of("l/s", 1, 1000),
        "dm3/s",
        "lps",
        "l/sec",
        "l/second",
        "litres/s",
        "litres/second",
        "liters/second",
        "litre/s",
        "l s-1");
    to.define(
        flow,
        of("m3/h", 1, 3600),
        "m3/hr",
        "m3/hour",
        "cmh",
        "cubic metres/hour",
        "m3 h-1",
        "cbm/h");
    to.define(flow, of("cfm", cubicFoot, 60), "ft3/min", "cu ft/min", "cubic feet/minute");
    to.define(flow, of("m3/s", 1, 1), "m3/sec", "m3/second", "m3 s-1");
    to.define(flow, of("l/min", 1, 60000), "litres/minute", "lpm");
    to.define(flow, of("m3/min", 1, 60));
    to.define(flow, of("l/h", 1, 3.6e6), "l/hour", "litres/hour");
    to.define(
        Dimension.AIR_CHANGE,
        of("/h", 1, 1),
        "1/h",
        "/hr",
        "/hour",
        "ach",
        "ac/h",
        "acph",
        "h-1",
        "air changes/hour",
        "air changes an hour",
        "air change/hour",
        "ach50",
        "/h @ 50 Pa");
    to.define(
        Dimension.AIR_PERMEABILITY,
        of("m3/(h.m2)", 1, 1),
        "m3/h/m2",
        "m3/m2h",
        "m3/m2/h",
        "m/h",
        "m3/h.m2 @ 50 Pa",
        "m3/m2.h @ 50 Pa",
        "m3 h-1 m-2");
    to.define(Dimension.AIR_PERMEABILITY, of("cfm/ft2", FOOT * 60, 1), "cfm50/ft2", "cfm/sq ft");
    Dimension speed = Dimension.SPEED;
    to.define(speed, of("m/s", 1, 1), "m/sec", "m/second", "metres/second", "m s-1");
    to.define(speed, of("km/h", 1, 3.6), "kmh", "kph");
    to.define(speed, of("mph", 0.44704, 1), "miles/hour", "mi/h");
    to.define(speed, of("ft/min", FOOT, 60), "fpm");
    to.define(speed, of("kn", 1852, 3600), "knots", "kt");
  }

  private static void rates(Sink to) {
    Dimension rate = Dimension.MASS_RATE;
    to.define(rate, of("kg/day", 1, DAY), "kg/d", "kg/24h", "kilograms/day", "kg d-1");
    to.define(
        rate,
        of("l/day", 1, DAY),
        "l/d",
        "l/24h",
        "litres/day",
        "litre/day",
        "liters/day",
        "liter/day");
    to.define(rate, of("g/h", 1, 3.6e6), "g/hr", "g/hour", "grams/hour");
    to.define(rate, of("g/day", 1, 1000 * DAY), "g/d", "g/24h", "grams/day", "ml/day", "ml/d");
    to.define(rate, of("kg/h", 1, 3600), "kg/hr", "kg/hour", "l/h", "l/hour", "litres/hour");
    to.define(rate, of("ml/h", 1, 3.6e6), "ml/hr", "ml/hour");
    to.define(rate, of("kg/week", 1, 7 * DAY), "kg/wk", "l/week", "litres/week", "liters/week");
    to.define(rate, of("kg/s", 1, 1));
    to.define(rate, of("g/s", 1, 1000));
    to.define(rate, of("mg/s", 1, 1e6));
  }

  private static void times(Sink to) {
    Dimension daily = Dimension.HOURS_PER_DAY;
    to.define(
        daily, of("h", 1, 1), "h/day", "h/d", "hr", "hrs", "hour", "hours", "hours/day", "hrs/day");
    to.define(daily, of("min", 1, 60), "mins", "minutes", "min/day", "min/d", "minutes/day");
    to.define(Dimension.YEARS, of("y", 1, 1), "a", "yr", "yrs", "year", "years");
    to.define(Dimension.YEARS, of("months", 1, 12), "month", "mo");
    Dimension duration = Dimension.DURATION;
    to.define(duration, of("s", 1, 1), "sec", "secs", "second", "seconds");
    to.define(duration, of("min", 60, 1), "mins", "minute", "minutes");
    to.define(duration, of("h", 3600, 1), "hr", "hrs", "hour", "hours");
  }

  private static void money(Sink to) {
    to.define(Dimension.MONEY, of("1", 1, 1));
    to.define(Dimension.ENERGY_PRICE, of("/kWh", 1, 1), "kWh");
    to.define(
        Dimension.ENERGY_PRICE,
        of("p/kWh", 1, 100),
        "pence/kWh",
        "c/kWh",
        "ct/kWh",
        "cent/kWh",
        "cents/kWh");
    to.define(Dimension.ENERGY_PRICE, of("/MWh", 1, 1000));
  }

  private static void heat(Sink to) {
    double perSquareFoot = BTU / 3600 / (FOOT * FOOT) * 9 / 5;
    to.define(Dimension.POWER, of("W", 1, 1), "watt", "watts");
    to.define(Dimension.POWER, of("kW", 1000, 1), "kilowatt", "kilowatts");
    to.define(Dimension.POWER, of("BTU/h", BTU, 3600), "BTU/hr", "btuh");
    Dimension u = Dimension.U_VALUE;
    to.define(u, of("W/(m2.K)", 1, 1), "W/m2/K", "W/K/m2", "W m-2 K-1", "W/m2.°C", "W/m2.C");
    to.define(u, of("BTU/(h.ft2.F)", perSquareFoot, 1), "BTU/hr/ft2/F", "BTU/(hr.ft2.°F)");
    Dimension conductivity = Dimension.CONDUCTIVITY;
    to.define(conductivity, of("W/(m.K)", 1, 1), "W/m/K", "W m-1 K-1", "W/m.°C", "W/m.C");
    Dimension resistance = Dimension.RESISTANCE;
    to.define(resistance, of("m2.K/W", 1, 1), "K.m2/W", "m2.°C/W", "m2 K W-1");
    to.define(resistance, of("h.ft2.F/BTU", 1, perSquareFoot), "ft2.F.h/BTU", "ft2.°F.h/BTU");
    Dimension pressure = Dimension.PRESSURE;
    to.define(pressure, of("Pa", 1, 1), "pascal", "pascals");
    to.define(pressure, of("hPa", 100, 1), "mbar", "millibar");
    to.define(pressure, of("kPa", 1000, 1));
    to.define(pressure, of("in wg", 249.08891, 1), "in w.g.", "in H2O", "inwc");
  }

  private static Symbol of(String name, double times, double over) {
    return new Symbol(name, 0, times, over);
  }
}
