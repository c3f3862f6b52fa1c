package org.drysill.survey.log.read;

/**
 * Where the fields of a row stand that are read, from 0; {@link #NONE} for what the log lacks.
 *
 * @param time date and time, or the date alone
 * @param timeOfDay time of day where it has a column of its own
 * @param temperature air temperature
 * @param humidity relative humidity
 * @param co2 carbon dioxide
 */
record Columns(int time, int timeOfDay, int temperature, int humidity, int co2) {
  static final int NONE = -1;

  /** How many fields a row must have so that its time and one value are there. */
  int least() {
    int value = Integer.MAX_VALUE;
    for (int column : new int[] {temperature, humidity, co2}) {
      value = column == NONE ? value : Math.min(value, column);
    }
    return 1 + Math.max(Math.max(time, timeOfDay), value);
  }
}
