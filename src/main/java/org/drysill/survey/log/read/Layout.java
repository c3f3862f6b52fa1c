package org.drysill.survey.log.read;

import java.util.Map;
import org.drysill.survey.log.LogLayout;

/**
 * How a file is written, as far as reading it needs.
 *
 * @param told what a reader of the report may want to know of it
 * @param columns where its fields stand
 * @param firstRow the line of the first reading, from 1
 * @param middleMs a moment in the middle of the first readings [ms since 1970-01-01T00:00Z]; {@link
 *     ZoneClock#NONE} where none of them has a time that is believed
 * @param newestFirst whether the rows run back in time
 * @param quoted whether quotation marks stand around fields
 */
record Layout(
    LogLayout told,
    Columns columns,
    int firstRow,
    long middleMs,
    boolean newestFirst,
    boolean quoted) {
  /** The same, with other names of columns for a reader of the report. */
  Layout telling(Map<String, String> names) {
    return new Layout(told.withColumns(names), columns, firstRow, middleMs, newestFirst, quoted);
  }
}
