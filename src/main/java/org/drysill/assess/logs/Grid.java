package org.drysill.assess.logs;

import org.drysill.survey.log.LoggedSeries;

/**
 * Even steps of time.
 *
 * @param first number of the first step; step k begins at k times its width from 1970-01-01T00:00Z
 * @param stepS width of every step [s]
 * @param size how many
 */
record Grid(long first, int stepS, int size) {
  /** The steps that a log spans, no finer than the log itself or another one. */
  static Grid of(LoggedSeries series, int finestS) {
    int step = Math.max(series.binSeconds(), finestS);
    long first = Math.floorDiv(series.beginEpochS(0), (long) step);
    long end = Math.floorDiv(series.beginEpochS(series.size()) - 1, (long) step) + 1;
    return new Grid(first, step, (int) (end - first));
  }

  long beginEpochS(int index) {
    return (first + index) * stepS;
  }

  /** The step that holds a moment, the first or last where it lies outside. */
  int clamped(long epochS) {
    long index = Math.floorDiv(epochS, (long) stepS) - first;
    return (int) Math.max(0, Math.min(size - 1L, index));
  }
}
