package org.drysill.survey.log.read;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import de.siegmar.fastcsv.reader.RecordType;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogLimits;
import org.drysill.survey.log.LogQuantity;

/**
 * Reads the times of rows while they pass, without making an object of any, and refuses rows that
 * have none; what their other fields mean is for its subclasses. It returns no records.
 */
abstract class TimedRows extends AbstractBaseCsvCallbackHandler<Void> {
  private final int timeColumn;
  private final int timeOfDayColumn;
  private final int leastFields;
  private final ClockText clock;
  private final ArrivalOrder arrival;
  private final Notes notes;
  private long read;
  private long lastLine;
  private boolean timeRead;
  private boolean binary;
  private long shortRow = -1;

  /**
   * Rows of a file.
   *
   * @param leastFields how many fields a row must have to be of use
   */
  TimedRows(Layout layout, int leastFields, LogLimits limits, Notes notes) {
    this.timeColumn = layout.columns().time();
    this.timeOfDayColumn = layout.columns().timeOfDay();
    this.leastFields = leastFields;
    this.clock = new ClockText(layout.told().dates());
    this.arrival = new ArrivalOrder(layout, limits, notes);
    this.notes = notes;
  }

  /** Forgets the row before. */
  abstract void clear();

  /** Takes a field that is no time. */
  abstract void field(int index, char[] text, int from, int end);

  /** Takes the row whose fields have passed. */
  abstract void keep(long moment, long line);

  /** Rows that were read, empty lines aside. */
  final long rowsRead() {
    return read;
  }

  /** The line of the last row that was begun. */
  final long lastLine() {
    return lastLine;
  }

  /**
   * Says what is only known at the end.
   *
   * @param brokenOff whether the file ends within a line
   */
  final void finish(boolean brokenOff) {
    noteShortRow(brokenOff ? LogFlaw.TRUNCATED : LogFlaw.TOO_FEW_FIELDS);
    arrival.finish();
  }

  @Override
  protected final void handleBegin(long line) {
    lastLine = line;
    timeRead = false;
    binary = false;
    clear();
  }

  @Override
  protected final void handleField(int index, char[] text, int offset, int length, boolean quoted) {
    int end = offset + length;
    if (index == timeColumn) {
      timeRead = clock.read(text, offset, end);
      binary |= !timeRead && isBinary(text, offset, end);
    } else if (index == timeOfDayColumn) {
      timeRead &= clock.readTimeOfDay(text, offset, end);
    } else {
      field(index, text, offset, end);
    }
  }

  @Override
  protected final Void buildRecord() {
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

  /** The number; NaN, with a note, where the field holds something else. */
  final double number(double value, LogQuantity quantity, long line) {
    if (value == DecimalText.UNREADABLE) {
      notes.add(LogFlaw.NOT_A_NUMBER, quantity, line);
      return Double.NaN;
    }
    return value;
  }

  /** The value; NaN, with a note, where it cannot be. */
  final double believed(double value, boolean possible, LogQuantity quantity, long line) {
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
