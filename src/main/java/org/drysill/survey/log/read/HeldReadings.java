package org.drysill.survey.log.read;

import java.time.Instant;
import java.util.Arrays;
import org.drysill.survey.log.LogFigures;
import org.drysill.survey.log.LogFlaw;
import org.drysill.survey.log.LogLimits;
import org.drysill.survey.log.LogQuantity;
import org.drysill.survey.log.LoggedSeries;
import org.drysill.survey.log.SeriesBuilder;

/**
 * Takes rows in the order of time, judges each between its neighbours, and lets it hold until the
 * next: at most for some median steps of its neighbourhood or of the log, whichever is longer, and
 * never longer than a stated time. What is left until the next row is a gap.
 */
final class HeldReadings {
  private static final int SHORTEST_BIN_S = 300;
  private static final int LONGEST_BIN_S = 86_400;
  private static final double HOUR_MS = 3_600_000;
  private static final double LONGEST_STEP_OF_HOUR_MS = 900_000;

  private final LogLimits limits;
  private final Notes notes;
  private final StepCounts steps = new StepCounts();
  private final StuckRun stuckTemperature;
  private final StuckRun stuckHumidity;
  private final StuckRun stuckPpm;
  private SeriesBuilder series;
  private double medianMs;
  private long used;
  private long firstMs;
  private long lastMs;
  private double coveredMs;
  private double gapMs;

  HeldReadings(LogLimits limits, Notes notes) {
    this.limits = limits;
    this.notes = notes;
    this.stuckTemperature = new StuckRun(LogQuantity.TEMPERATURE, limits.stuckS(), notes);
    this.stuckHumidity = new StuckRun(LogQuantity.HUMIDITY, limits.stuckS(), notes);
    this.stuckPpm = new StuckRun(LogQuantity.CO2, limits.stuckS(), notes);
  }

  /**
   * Takes some rows.
   *
   * @param rows rows in the order of time; those around the ones to take are looked at
   * @param from the first to take
   * @param to where to stop
   */
  void take(Rows rows, int from, int to) {
    for (int i = Math.max(1, from); i < to; i++) {
      if (rows.ms[i] > rows.ms[i - 1]) {
        steps.add(rows.ms[i] - rows.ms[i - 1]);
      }
    }
    medianMs = steps.median();
    if (series == null) {
      series = new SeriesBuilder(width());
    }
    for (int i = from; i < to; i++) {
      takeOne(rows, i);
    }
  }

  /** Says what is only known at the end. */
  void finish() {
    stuckTemperature.end();
    stuckHumidity.end();
    stuckPpm.end();
  }

  boolean isEmpty() {
    return used == 0;
  }

  LoggedSeries series() {
    return series.build();
  }

  LogFigures figures(long rowsRead) {
    return new LogFigures(
        rowsRead,
        used,
        Instant.ofEpochMilli(firstMs),
        Instant.ofEpochMilli(lastMs),
        steps.median() / 1000,
        coveredMs / 1000,
        gapMs / 1000);
  }

  private int width() {
    long step = Math.round(medianMs / 1000);
    return (int) Math.max(SHORTEST_BIN_S, Math.min(LONGEST_BIN_S, step));
  }

  private void takeOne(Rows rows, int i) {
    long at = rows.ms[i];
    boolean hasNext = i + 1 < rows.size;
    if (hasNext && rows.ms[i + 1] == at) {
      notes.add(LogFlaw.DUPLICATE_TIME, rows.line[i + 1]);
      return;
    }
    if (hasNext && i > 0) {
      removeSpikes(rows, i);
    }
    boolean any =
        !(Double.isNaN(rows.celsius[i])
            && Double.isNaN(rows.humidity[i])
            && Double.isNaN(rows.ppm[i]));
    long hold = hasNext ? hold(rows, i) : nominalHold();
    if (any) {
      use(rows, i, hold);
    }
  }

  private void use(Rows rows, int i, long hold) {
    long at = rows.ms[i];
    double humidity = rows.humidity[i];
    firstMs = used == 0 ? at : Math.min(firstMs, at);
    lastMs = used == 0 ? at : Math.max(lastMs, at);
    used++;
    coveredMs += hold;
    stuckTemperature.see(rows.celsius[i], at, rows.line[i]);
    stuckHumidity.see(humidity, at, rows.line[i]);
    stuckPpm.see(rows.ppm[i], at, rows.line[i]);
    if (humidity >= limits.saturatedFrom()) {
      notes.add(LogFlaw.SATURATED, LogQuantity.HUMIDITY, rows.line[i], hold / 1000.0);
    }
    series.add(at, at + hold, rows.celsius[i], humidity, rows.ppm[i]);
  }

  /** How long a row holds that another follows [ms]. */
  private long hold(Rows rows, int i) {
    double step = rows.ms[i + 1] - rows.ms[i];
    if (step < 0) {
      return nominalHold();
    }
    double longest = longestHold(medianMs);
    if (step > longest) {
      double usual = usualStepNear(rows, i);
      longest = Math.max(longest, longestHold(usual));
      if (step > longest) {
        gap(rows.line[i + 1], step, step - longest, usual);
        return Math.round(longest);
      }
    }
    return Math.round(step);
  }

  private void gap(long line, double step, double missing, double usual) {
    gapMs += missing;
    notes.add(LogFlaw.GAP, line, missing / 1000);
    if (usual <= LONGEST_STEP_OF_HOUR_MS && Math.abs(step - HOUR_MS - usual) < usual / 2) {
      notes.add(LogFlaw.CLOCK_SET_FORWARD, line);
    }
    stuckTemperature.end();
    stuckHumidity.end();
    stuckPpm.end();
  }

  private double longestHold(double step) {
    return Math.min(limits.holdSteps() * step, limits.longestHoldS() * 1000);
  }

  /** What a row holds that none follows. */
  private long nominalHold() {
    return Math.max(1000, Math.round(Math.min(medianMs, limits.longestHoldS() * 1000)));
  }

  /** The median step around a row; a log may change its step on the way. */
  private static double usualStepNear(Rows rows, int i) {
    int from = Math.max(0, i - SortWindow.CONTEXT);
    int to = Math.min(rows.size - 1, i + SortWindow.CONTEXT);
    long[] near = new long[to - from];
    for (int k = from; k < to; k++) {
      near[k - from] = Math.max(0, rows.ms[k + 1] - rows.ms[k]);
    }
    Arrays.sort(near);
    return near[near.length / 2];
  }

  private void removeSpikes(Rows rows, int i) {
    double longest = limits.longestHoldS() * 1000;
    if (rows.ms[i + 1] - rows.ms[i] > longest || rows.ms[i] - rows.ms[i - 1] > longest) {
      return;
    }
    removeSpike(rows.celsius, i, limits.spikeKelvin(), LogQuantity.TEMPERATURE, rows.line[i]);
    removeSpike(rows.humidity, i, limits.spikeHumidity(), LogQuantity.HUMIDITY, rows.line[i]);
    removeSpike(rows.ppm, i, limits.spikePpm(), LogQuantity.CO2, rows.line[i]);
  }

  private void removeSpike(double[] values, int i, double limit, LogQuantity what, long line) {
    double up = values[i] - values[i - 1];
    double down = values[i] - values[i + 1];
    boolean far = Math.abs(up) > limit && Math.abs(down) > limit;
    if (far && Math.abs(up - down) < limit / 2) {
      values[i] = Double.NaN;
      notes.add(LogFlaw.SPIKE, what, line);
    }
  }
}
