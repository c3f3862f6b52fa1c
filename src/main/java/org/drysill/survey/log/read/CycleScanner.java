package org.drysill.survey.log.read;

import java.util.Arrays;
import java.util.Map;
import org.drysill.survey.TemperatureUnit;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogLimits;
import org.drysill.survey.log.LogQuantity;

/** Turns the fields of rows of a log of cycles into numbers. */
final class CycleScanner extends TimedRows {
  private final LogQuantity[] quantities;
  private final int[] columns;
  private final double[] fields;
  private final DecimalText decimal;
  private final TemperatureUnit unit;
  private final LogLimits limits;
  private final Notes notes;
  private final CycleRows rows;

  /** For the columns that were found, in the order of the rows. */
  CycleScanner(
      Layout layout,
      Map<LogQuantity, Integer> found,
      LogLimits limits,
      Notes notes,
      CycleRows rows) {
    super(layout, least(layout, found), limits, notes);
    this.quantities = found.keySet().toArray(new LogQuantity[0]);
    this.columns = found.values().stream().mapToInt(i -> i).toArray();
    this.fields = new double[columns.length];
    this.decimal = new DecimalText(layout.told().decimalMark());
    this.unit = layout.told().temperatureUnit();
    this.limits = limits;
    this.notes = notes;
    this.rows = rows;
  }

  /** A row must reach as far as its time and the air at the grille. */
  private static int least(Layout layout, Map<LogQuantity, Integer> found) {
    int time = Math.max(layout.columns().time(), layout.columns().timeOfDay());
    return 1 + Math.max(time, found.get(LogQuantity.SUPPLY_TEMPERATURE));
  }

  @Override
  void clear() {
    Arrays.fill(fields, Double.NaN);
  }

  @Override
  void field(int index, char[] text, int from, int end) {
    for (int i = 0; i < columns.length; i++) {
      if (index == columns[i]) {
        fields[i] = decimal.read(text, from, end);
      }
    }
  }

  @Override
  void keep(long moment, long line) {
    boolean any = false;
    for (int i = 0; i < fields.length; i++) {
      fields[i] = value(i, line);
      any |= !Double.isNaN(fields[i]);
    }
    if (!any) {
      notes.add(LogFlaw.NO_VALUE, line);
    } else if (!rows.add(moment, fields, line)) {
      notes.add(LogFlaw.BEYOND, line);
    }
  }

  private double value(int i, long line) {
    double number = number(fields[i], quantities[i], line);
    if (quantities[i] == LogQuantity.FLOW) {
      return number;
    }
    double celsius = unit.celsius(number);
    boolean possible = celsius >= limits.lowestCelsius() && celsius <= limits.highestCelsius();
    return believed(celsius, possible, quantities[i], line);
  }
}
