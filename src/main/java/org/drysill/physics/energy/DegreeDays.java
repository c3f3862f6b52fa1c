package org.drysill.physics.energy;

import java.util.stream.DoubleStream;
import org.drysill.physics.Bounds;

/**
 * Heating degree-days.
 *
 * <pre>
 * by hour    DD = Σ max(0, Tb − Te,h) / 24
 * by month   DD = d·(Tb − T̄) / (1 − exp(−k·(Tb − T̄)))          Hitchin 1983
 * </pre>
 *
 * <p>DD degree-days [K·d], Tb base and Te, T̄ outdoor temperature of an hour and mean of a month
 * [°C], d days of the month, k constant of the place [1/K]. Hitchin's formula as in CIBSE TM41:2006
 * (memory), for temperate climates.
 */
public final class DegreeDays {
  private DegreeDays() {}

  /** Degree-days [K·d] of hourly outdoor temperatures [°C]. */
  public static double ofHours(DoubleStream hourlyCelsius, double baseCelsius) {
    Bounds.finite("base temperature [°C]", baseCelsius);
    return hourlyCelsius
        .map(t -> Math.max(0, baseCelsius - Bounds.finite("outdoor temperature [°C]", t)) / 24)
        .sum();
  }

  /**
   * Degree-days [K·d] of a month by Hitchin's formula; d/k where the mean equals the base, and
   * never less than the mean alone would give.
   *
   * @param constant k [1/K], above 0
   */
  public static double hitchin(
      double meanCelsius, double days, double baseCelsius, double constant) {
    Bounds.above("days", days, 0);
    Bounds.above("Hitchin's constant k [1/K]", constant, 0);
    double difference =
        Bounds.finite("base temperature [°C]", baseCelsius)
            - Bounds.finite("mean temperature [°C]", meanCelsius);
    double exponent = constant * difference;
    // expm1 keeps the quotient exact where the difference is small; at 0 it is the limit 1/k.
    return exponent == 0 ? days / constant : -days * difference / Math.expm1(-exponent);
  }
}
