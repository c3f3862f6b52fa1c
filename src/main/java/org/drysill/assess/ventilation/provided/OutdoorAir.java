package org.drysill.assess.ventilation.provided;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.physics.flow.CombinedFlow;

/**
 * Outdoor air of a home whose fans switch on and off, averaged over time.
 *
 * <pre>Q = Σ_states p · (Qb + √(Qu² + Qi²)),   p = Π share (on) · Π (1 − share) (off)</pre>
 *
 * <p>Qb, Qu and Qi balanced flow, unbalanced flow and infiltration of a state [m³/s], combined by
 * {@link CombinedFlow}; share the part of the day that a fan runs. Fans are taken to switch
 * independently of each other. The quadrature of a mean flow would lose most of what a strong fan
 * does in a short time, so each state is combined by itself. Never falls when a flow, a share or
 * the infiltration rises.
 */
public final class OutdoorAir {
  /** As many fans are switched each by itself; further ones, the weakest, run at their mean. */
  private static final int MOST_SWITCHED = 12;

  private OutdoorAir() {}

  /**
   * A fan.
   *
   * @param supplyM3S what it brings in while it runs [m³/s]
   * @param extractM3S what it takes out while it runs [m³/s]
   * @param share the part of the day that it runs [1]
   */
  public record Source(double supplyM3S, double extractM3S, double share) {
    /** What it brings in, averaged over time [m³/s]. */
    public double meanSupply() {
      return supplyM3S * share;
    }

    /** What it takes out, averaged over time [m³/s]. */
    public double meanExtract() {
      return extractM3S * share;
    }

    private double mean() {
      return Math.max(meanSupply(), meanExtract());
    }

    private Source atMean() {
      return new Source(meanSupply(), meanExtract(), 1);
    }
  }

  /** All outdoor air, time-averaged [m³/s]. */
  public static double meanM3S(List<Source> fans, double infiltrationM3S) {
    List<Source> strongestFirst =
        fans.stream().sorted(Comparator.comparingDouble(Source::mean).reversed()).toList();
    List<Source> sources =
        IntStream.range(0, strongestFirst.size())
            .mapToObj(
                i -> i < MOST_SWITCHED ? strongestFirst.get(i) : strongestFirst.get(i).atMean())
            .toList();
    return mean(sources, 0, 0, 0, infiltrationM3S);
  }

  private static double mean(
      List<Source> sources, int next, double supply, double extract, double infiltration) {
    if (next == sources.size()) {
      return CombinedFlow.totalM3S(supply, extract, infiltration);
    }
    Source fan = sources.get(next);
    double on =
        fan.share() == 0
            ? 0
            : mean(
                sources,
                next + 1,
                supply + fan.supplyM3S(),
                extract + fan.extractM3S(),
                infiltration);
    double off = fan.share() == 1 ? 0 : mean(sources, next + 1, supply, extract, infiltration);
    return fan.share() * on + (1 - fan.share()) * off;
  }
}
