package org.drysill.survey.log.read;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.RecordType;
import org.drysill.survey.TemperatureUnit;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogLimits;
import org.drysill.survey.log.LogQuantity;

/**
 * Turns the fields of rows into numbers while they pass, without making an object of any, and
 * refuses what cannot be. It returns no records; what it reads goes into the window.
 */
final class RowScanner extends AbstractBaseCsvCallbackHandler<Void> {
  private final Columns columns;
  private final int leastFields;
  private final ClockText clock;
  private final DecimalText decimal;
  private final TemperatureUnit unit;
  private final double humidityFactor;
  private final LogLimits limits;
  private final Notes notes;
  private final ArrivalOrder arrival;
  private final SortWindow window;
  private long read;
  private long lastLine;
  private boolean timeRead;
  private boolean binary;
  private double temperature;
  private double humidity;
  private double co2;
  private long shortRow = -1;

  RowScanner(Layout layout, LogLimits limits, Notes notes, SortWindow window) {
    this.columns = layout.columns();
    this.leastFields = columns.least();
    this.clock = new ClockText(layout.told().dates());
    this.decimal = new DecimalText(layout.told().decimalMark());
    this.unit = layout.told().temperatureUnit();
    this.humidityFactor = layout.told().humidityAsFraction() ? 1 : 0.01;
    this.limits = limits;
    this.notes = notes;
    this.arrival = new ArrivalOrder(layout, limits, notes);
    this.window = window;
  }

  /** Rows that were read, empty lines aside. */
  long rowsRead() {
    return read;
  }

  /** The line of the last row that was begun. */
  long lastLine() {
    return lastLine;
  }

  /**
   * Says what is only known at the end.
   *
   * @param brokenOff whether the file ends within a line
   */
  void finish(boolean brokenOff) {
    noteShortRow(brokenOff ? LogFlaw.TRUNCATED : LogFlaw.TOO_FEW_FIELDS);
    arrival.finish();
  }

  @Override
  protected void handleBegin(long line) {
    lastLine = line;
    timeRead = false;
    binary = false;
    temperature = Double.NaN;
    humidity = Double.NaN;
    co2 = Double.NaN;
  }

  @Override
  protected void handleField(int index, char[] text, int offset, int length, boolean quoted) {
    int end = offset + length;
    if (index == columns.time()) {
      timeRead = clock.read(text, offset, end);
      binary |= !timeRead && isBinary(text, offset, end);
    } else if (index == columns.timeOfDay()) {
      timeRead &= clock.readTimeOfDay(text, offset, end);
    } else if (index == columns.temperature()) {
      temperature = decimal.read(text, offset, end);
    } else if (index == columns.humidity()) {
      humidity = decimal.read(text, offset, end);
    } else if (index == columns.co2()) {
      co2 = decimal.read(text, offset, end);
    }
  }

  @Override
  protected Void buildRecord() {
    if (getRecordType() == RecordType.DATA) {
      read++;
      noteShortRow(LogFlaw.TOO_FEW_FIELDS);
      row(getStartingLineNumber());
    }
    return null;
  }

  private void row(long line) {
    if (binary) {
      notes.add(LogFlaw.BINARY, line);
    } else if (getFieldCount() < leastFields) {
      shortRow = line;
    } else if (!timeRead) {
      notes.add(LogFlaw.UNREADABLE_TIME, line);
    } else {
      long moment = arrival.moment(clock.ms(), clock.isAbsolute(), line);
      if (moment != ZoneClock.NONE) {
        keep(moment, line);
      }
    }
  }

  private void keep(long moment, long line) {
    double celsius = celsius(line);
    double ratio = humidity(line);
    double ppm = ppm(line);
    if (Double.isNaN(celsius) && Double.isNaN(ratio) && Double.isNaN(ppm)) {
      notes.add(LogFlaw.NO_VALUE, line);
    }
    window.add(moment, celsius, ratio, ppm, line);
  }

  private double celsius(long line) {
    double value = unit.celsius(number(temperature, LogQuantity.TEMPERATURE, line));
    boolean possible = value >= limits.lowestCelsius() && value <= limits.highestCelsius();
    return believed(value, possible, LogQuantity.TEMPERATURE, line);
  }

  private double ppm(long line) {
    double value = number(co2, LogQuantity.CO2, line);
    boolean possible = value >= limits.lowestPpm() && value <= limits.highestPpm();
    return believed(value, possible, LogQuantity.CO2, line);
  }

  private double humidity(long line) {
    double ratio = number(humidity, LogQuantity.HUMIDITY, line) * humidityFactor;
    boolean possible = ratio >= limits.lowestHumidity() && ratio <= 1 + limits.aboveSaturation();
    double believed = believed(ratio, possible, LogQuantity.HUMIDITY, line);
    if (believed > 1) {
      notes.add(LogFlaw.ABOVE_SATURATION, LogQuantity.HUMIDITY, line);
      return 1;
    }
    return believed;
  }

  /** The number; NaN, with a note, where the field holds something else. */
  private double number(double value, LogQuantity quantity, long line) {
    if (value == DecimalText.UNREADABLE) {
      notes.add(LogFlaw.NOT_A_NUMBER, quantity, line);
      return Double.NaN;
    }
    return value;
  }

  private double believed(double value, boolean possible, LogQuantity quantity, long line) {
    if (possible || Double.isNaN(value)) {
      return value;
    }
    notes.add(LogFlaw.IMPOSSIBLE, quantity, line);
    return Double.NaN;
  }

  private void noteShortRow(LogFlaw flaw) {
    if (shortRow >= 0) {
      notes.add(flaw, shortRow);
      shortRow = -1;
    }
  }

  private static boolean isBinary(char[] text, int from, int to) {
    for (int i = from; i < to; i++) {
      if ((text[i] < ' ' && text[i] != '\t') || text[i] == '\uFFFD') {
        return true;
      }
    }
    return false;
  }
}
