package org.drysill.survey.log;

import org.drysill.physics.air.HumidityReference;
import org.drysill.physics.air.MoistAir;

/**
 * Gathers readings into bins. Where the bins become more than {@value #MOST_BINS}, neighbours are
 * merged and the width doubles, so the memory does not depend on the number of readings; merging
 * keeps every mean. Readings may come in any order of time.
 */
public final class SeriesBuilder {
  /** The most bins that a series has; at five minutes they span fifteen months. */
  public static final int MOST_BINS = 1 << 17;

  static final int TEMPERATURE = 0;
  static final int HUMIDITY = 1;
  static final int VAPOUR_PRESSURE = 2;
  static final int VAPOUR_CONTENT = 3;
  static final int CO2 = 4;
  private static final int CHANNELS = 5;
  private static final int FEWEST_BINS = 64;
  private static final double MS = 1000;

  private final BinnedSums[] sums = new BinnedSums[CHANNELS];
  private final int mostBins;
  private int binSeconds;
  private long firstBin;
  private long endBin;
  private int capacity;
  private int lastBin;
  private long lastBeginMs;
  private long lastEndMs;

  /** Begins with bins of a width [s]. */
  public SeriesBuilder(int binSeconds) {
    this(binSeconds, MOST_BINS);
  }

  SeriesBuilder(int binSeconds, int mostBins) {
    this.binSeconds = binSeconds;
    this.mostBins = mostBins;
    for (int i = 0; i < CHANNELS; i++) {
      sums[i] = new BinnedSums();
    }
  }

  /**
   * Adds a reading that holds for a while; NaN for a quantity that it lacks.
   *
   * @param fromMs when it was taken [ms since 1970-01-01T00:00Z]
   * @param toMs until when it holds, later than that
   * @param celsius air temperature [°C], −100 to 100
   * @param humidity relative humidity over water [ratio], 0 to 1.5
   * @param ppm carbon dioxide [ppm]
   */
  public void add(long fromMs, long toMs, double celsius, double humidity, double ppm) {
    double pressure = Double.NaN;
    double content = Double.NaN;
    if (!Double.isNaN(celsius) && !Double.isNaN(humidity)) {
      pressure = MoistAir.vapourPressurePa(celsius, humidity, HumidityReference.OVER_WATER);
      content = MoistAir.vapourContentKgM3(celsius, pressure);
    }
    if (fromMs < lastBeginMs || toMs > lastEndMs) {
      makeRoom(fromMs, toMs);
    }
    long begin = fromMs;
    while (begin < toMs) {
      if (begin < lastBeginMs || begin >= lastEndMs) {
        turnTo(begin);
      }
      long end = Math.min(toMs, lastEndMs);
      double seconds = (end - begin) / MS;
      sums[TEMPERATURE].add(lastBin, seconds, celsius);
      sums[HUMIDITY].add(lastBin, seconds, humidity);
      sums[VAPOUR_PRESSURE].add(lastBin, seconds, pressure);
      sums[VAPOUR_CONTENT].add(lastBin, seconds, content);
      sums[CO2].add(lastBin, seconds, ppm);
      begin = end;
    }
  }

  /** Looks up the bin of a moment; most readings fall into the bin of the one before. */
  private void turnTo(long ms) {
    long width = binSeconds * 1000L;
    long bin = Math.floorDiv(ms, width);
    lastBin = (int) (bin - firstBin);
    lastBeginMs = bin * width;
    lastEndMs = lastBeginMs + width;
  }

  /** Width of the bins as they are now [s]. */
  int binSeconds() {
    return binSeconds;
  }

  /** The series of what was added so far. */
  public LoggedSeries build() {
    int size = (int) (endBin - firstBin);
    Channel[] channels = new Channel[CHANNELS];
    for (int i = 0; i < CHANNELS; i++) {
      channels[i] = sums[i].channel(size, binSeconds);
    }
    return new LoggedSeries(firstBin, binSeconds, size, channels);
  }

  private void makeRoom(long fromMs, long toMs) {
    long first = Math.floorDiv(fromMs, binSeconds * 1000L);
    long end = Math.floorDiv(toMs - 1, binSeconds * 1000L) + 1;
    if (capacity > 0 && first >= firstBin && end <= firstBin + capacity) {
      endBin = Math.max(endBin, end);
      return;
    }
    if (capacity == 0) {
      firstBin = first;
      endBin = end;
    }
    long newFirst = Math.min(first, firstBin);
    long newEnd = Math.max(end, endBin);
    if (newEnd - newFirst > mostBins) {
      mergeNeighbours();
      makeRoom(fromMs, toMs);
      return;
    }
    grow(newFirst, newEnd);
  }

  private void grow(long newFirst, long newEnd) {
    int wanted = (int) (newEnd - newFirst);
    int size =
        wanted <= capacity
            ? capacity
            : Math.max(wanted, Math.min(mostBins, Math.max(FEWEST_BINS, 2 * capacity)));
    int shift = (int) (firstBin - newFirst);
    int used = capacity == 0 ? 0 : (int) (endBin - firstBin);
    for (BinnedSums sum : sums) {
      sum.grow(size, shift, used);
    }
    capacity = size;
    firstBin = newFirst;
    endBin = newEnd;
    lastEndMs = lastBeginMs;
  }

  private void mergeNeighbours() {
    long newFirst = Math.floorDiv(firstBin, 2L);
    int odd = (int) (firstBin - 2 * newFirst);
    int used = (int) (endBin - firstBin);
    if (capacity > 0) {
      for (BinnedSums sum : sums) {
        sum.mergeNeighbours(odd, used);
      }
    }
    endBin = Math.floorDiv(endBin - 1, 2L) + 1;
    firstBin = newFirst;
    binSeconds *= 2;
    lastEndMs = lastBeginMs;
  }
}
