package org.drysill.physics.recovery.cycle;

import java.util.Arrays;
import java.util.List;

/**
 * The mean of cycles that follow each other, and how well their scatter lets it be known.
 *
 * @param mean weighted by air
 * @param error standard error of the mean
 * @param settling cycles at the start that were left out
 */
record Spell(double mean, double error, int settling) {
  /** What lies further from the later half than this many deviations has not settled. */
  private static final double DEVIATIONS = 3;

  /** A difference of the ratio of less than this is none. */
  private static final double SETTLED = 0.01;

  private static final double MOST_CORRELATION = 0.8;

  /** Of at least two windows. */
  static Spell of(List<Window> windows) {
    double[] ratios = windows.stream().mapToDouble(Window::ratio).toArray();
    int settling = settling(ratios);
    List<Window> settled = windows.subList(settling, windows.size());
    double air = settled.stream().mapToDouble(Window::air).sum();
    double mean = settled.stream().mapToDouble(w -> w.air() * w.ratio()).sum() / air;
    return new Spell(mean, error(settled, mean), settling);
  }

  private static int settling(double[] ratios) {
    int half = ratios.length / 2;
    double[] later = Arrays.copyOfRange(ratios, half, ratios.length);
    double centre = Medians.of(later);
    double allowed = Math.max(SETTLED, DEVIATIONS * Medians.deviation(later, centre));
    int settling = 0;
    while (settling < half && Math.abs(ratios[settling] - centre) > allowed) {
      settling++;
    }
    return settling;
  }

  /** Neighbouring cycles are alike, and so tell less than as many independent ones. */
  private static double error(List<Window> windows, double mean) {
    int n = windows.size();
    double squares = 0;
    double products = 0;
    for (int i = 0; i < n; i++) {
      double off = windows.get(i).ratio() - mean;
      squares += off * off;
      products += i == 0 ? 0 : off * (windows.get(i - 1).ratio() - mean);
    }
    double correlation =
        squares > 0 ? Math.max(0, Math.min(MOST_CORRELATION, products / squares)) : 0;
    double variance = squares / (n - 1);
    return Math.sqrt(variance / n * (1 + correlation) / (1 - correlation));
  }
}
