package org.drysill.survey.log;

/**
 * One quantity of a log by bins of time. A bin in which no reading of it holds is unknown: its mean
 * and extremes are NaN.
 */
public final class Channel {
  private final double[] seconds;
  private final double[] means;
  private final double[] lows;
  private final double[] highs;
  private final Whole whole;

  Channel(double[] seconds, double[] means, double[] lows, double[] highs, Whole whole) {
    this.seconds = seconds;
    this.means = means;
    this.lows = lows;
    this.highs = highs;
    this.whole = whole;
  }

  /**
   * A quantity over the whole log.
   *
   * @param seconds time for which readings of it hold [s]
   * @param mean its mean over this time; NaN where there is none
   * @param low its lowest value; NaN where there is none
   * @param high its highest value; NaN where there is none
   */
  public record Whole(double seconds, double mean, double low, double high) {}

  /** Time of a bin for which readings hold [s], at most the width of the bin. */
  public double seconds(int bin) {
    return seconds[bin];
  }

  /** Mean of a bin, weighted by time; NaN where it is unknown. */
  public double mean(int bin) {
    return means[bin];
  }

  /** Lowest value of a bin; NaN where it is unknown. */
  public double low(int bin) {
    return lows[bin];
  }

  /** Highest value of a bin; NaN where it is unknown. */
  public double high(int bin) {
    return highs[bin];
  }

  /** True where a reading holds in the bin. */
  public boolean isKnown(int bin) {
    return seconds[bin] > 0;
  }

  /** The quantity over the whole log; it does not depend on the bins. */
  public Whole whole() {
    return whole;
  }

  /** True where the log holds the quantity at all. */
  public boolean isLogged() {
    return whole.seconds() > 0;
  }
}
