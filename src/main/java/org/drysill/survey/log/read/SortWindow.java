package org.drysill.survey.log.read;

/**
 * Puts rows into the order of time, within a window of {@value #ROWS} rows: a log of that many rows
 * may come in any order, a longer one may be out of order by half as many. Where rows come in
 * order, nothing is sorted.
 */
final class SortWindow {
  static final int ROWS = 1 << 16;

  /** Rows that stay behind those that were taken, for whoever looks at neighbours. */
  static final int CONTEXT = 8;

  private final Rows rows = new Rows();
  private final HeldReadings readings;
  private int taken;
  private boolean ordered = true;

  SortWindow(HeldReadings readings) {
    this.readings = readings;
  }

  void add(long ms, double celsius, double humidity, double ppm, long line) {
    ordered &= rows.size == taken || ms >= rows.ms[rows.size - 1];
    rows.add(ms, celsius, humidity, ppm, line);
    if (rows.size == ROWS) {
      order();
      take(ROWS / 2);
    }
  }

  /** Hands on what is left. */
  void finish() {
    order();
    take(rows.size);
  }

  private void order() {
    if (!ordered) {
      rows.sort(taken);
      ordered = true;
    }
  }

  private void take(int to) {
    readings.take(rows, taken, to);
    int gone = Math.max(0, to - CONTEXT);
    rows.drop(gone);
    taken = to - gone;
  }
}
