package org.drysill.physics.recovery;

import java.util.List;
import org.drysill.physics.Bounds;
import org.drysill.physics.TemperatureRatio;

/**
 * The supply ratio of an alternating unit over whole supply half-cycles, EN 13141-8 (memory).
 *
 * <pre>η = Σ wj·(Tsu,j − Te) / Σ wj·(Ti − Te)</pre>
 *
 * <p>Tsu,j supply temperature of sample j [°C], wj its weight: the air that it stands for (flow by
 * time), or 1 for equal steps at constant flow. The store cools as it gives heat, so a single
 * reading at the start of supply overstates.
 */
public final class SupplyHalfCycle {
  private SupplyHalfCycle() {}

  /**
   * A sample of the supply half-cycle.
   *
   * @param supplyCelsius supply temperature [°C]
   * @param weight the air that it stands for, in any unit, above 0
   */
  public record Sample(double supplyCelsius, double weight) {
    /** Refuses samples that stand for no air. */
    public Sample {
      Bounds.finite("supply temperature [°C]", supplyCelsius);
      Bounds.above("weight of a sample", weight, 0);
    }

    /** A sample of the same weight as all others. */
    public static Sample of(double supplyCelsius) {
      return new Sample(supplyCelsius, 1);
    }
  }

  /** Weighted mean supply temperature [°C] of at least one sample. */
  public static double meanSupplyCelsius(List<Sample> samples) {
    Bounds.above("number of samples", samples.size(), 0);
    double weight = samples.stream().mapToDouble(Sample::weight).sum();
    double sum = samples.stream().mapToDouble(s -> s.weight() * s.supplyCelsius()).sum();
    return sum / weight;
  }

  /** Ratio η over the samples, the room and outdoors staying at their temperatures [°C]. */
  public static double meanRatio(
      List<Sample> samples, double indoorCelsius, double outdoorCelsius) {
    return TemperatureRatio.of(meanSupplyCelsius(samples), indoorCelsius, outdoorCelsius);
  }
}
