package org.drysill.survey.log.read;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import java.util.EnumSet;
import java.util.Set;
import org.drysill.survey.log.DateOrder;

/**
 * Watches dates until they tell in which order they are written: by a number that can only be a
 * day, else by the number that moves on when a day does, for neighbouring rows are days apart and
 * not months.
 */
final class DateOrderFinder extends AbstractBaseCsvCallbackHandler<DateOrder> {
  private final int column;
  private final ClockText dayFirst = new ClockText(DateOrder.DAY_MONTH_YEAR);
  private final ClockText monthFirst = new ClockText(DateOrder.MONTH_DAY_YEAR);
  private final Set<DateOrder> possible =
      EnumSet.of(DateOrder.DAY_MONTH_YEAR, DateOrder.MONTH_DAY_YEAR);
  private int lastFirst = -1;
  private int lastSecond = -1;
  private long firstMoves;
  private long secondMoves;

  DateOrderFinder(int column) {
    this.column = column;
  }

  @Override
  protected void handleField(int index, char[] text, int offset, int length, boolean quoted) {
    if (index == column) {
      see(text, offset, offset + length);
    }
  }

  /** What is certain by now ends the search. */
  @Override
  protected DateOrder buildRecord() {
    return possible.size() == 1 ? possible.iterator().next() : null;
  }

  /** Looks at one date. */
  void see(char[] text, int from, int to) {
    boolean asDay = dayFirst.read(text, from, to);
    boolean asMonth = monthFirst.read(text, from, to);
    if (asDay == asMonth) {
      watch(asDay);
    } else {
      possible.retainAll(EnumSet.of(asDay ? DateOrder.DAY_MONTH_YEAR : DateOrder.MONTH_DAY_YEAR));
    }
  }

  private void watch(boolean readable) {
    if (!readable) {
      return;
    }
    int first = dayFirst.part(0);
    int second = dayFirst.part(1);
    if (lastFirst >= 0) {
      firstMoves += first == lastFirst ? 0 : 1;
      secondMoves += second == lastSecond ? 0 : 1;
    }
    lastFirst = first;
    lastSecond = second;
  }

  /** What the dates tell; both orders where they do not. */
  Set<DateOrder> found() {
    if (possible.size() == 1 || firstMoves == secondMoves) {
      return possible;
    }
    return EnumSet.of(
        firstMoves > secondMoves ? DateOrder.DAY_MONTH_YEAR : DateOrder.MONTH_DAY_YEAR);
  }
}
