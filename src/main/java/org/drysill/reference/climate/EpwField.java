package org.drysill.reference.climate;

/**
 * A field of a record, with what the published data dictionary of the EPW layout (seen) says of it.
 */
enum EpwField {
  MONTH("month", 2, 1, 12),
  DAY("day", 3, 1, 31),
  HOUR("hour", 4, 1, 24),
  DRY_BULB("dry bulb temperature", 7, -70, 70, 99.9, 1),
  DEW_POINT("dew point temperature", 8, -70, 70, 99.9, 1),
  RELATIVE_HUMIDITY("relative humidity", 9, 0, 110, 999, 0.01),
  PRESSURE("station pressure", 10, 31_000, 120_000, 999_999, 1),
  WIND_SPEED("wind speed", 22, 0, 40, 999, 1);

  private final String label;
  private final int number;
  private final double low;
  private final double high;
  private final double missingFrom;
  private final double factor;

  EpwField(String label, int number, double low, double high) {
    this(label, number, low, high, Double.POSITIVE_INFINITY, 1);
  }

  EpwField(String label, int number, double low, double high, double missingFrom, double factor) {
    this.label = label;
    this.number = number;
    this.low = low;
    this.high = high;
    this.missingFrom = missingFrom;
    this.factor = factor;
  }

  /** How many fields a record must have so that all of these are there. */
  static final int FIELDS = 22;

  String label() {
    return label;
  }

  /** Where it stands in a record, from 0. */
  int index() {
    return number - 1;
  }

  boolean isMissing(double value) {
    return value >= missingFrom;
  }

  boolean isAllowed(double value) {
    return value >= low && value <= high;
  }

  /** In the unit that the program keeps. */
  double kept(double value) {
    return value * factor;
  }

  String range() {
    return "from " + plain(low) + " to " + plain(high);
  }

  private static String plain(double value) {
    return Long.toString(Math.round(value));
  }
}
