package org.drysill.physics.energy;

import java.util.List;
import java.util.stream.DoubleStream;
import org.drysill.physics.Bounds;

/**
 * Heating degree-days.
 *
 * <pre>
 * by hour    DD = Σ max(0, Tb − Te,h) / 24
 * by month   DD = d·(Tb − T̄) / (1 − exp(−k·(Tb − T̄)))          Hitchin 1983
 * of heated months   D = Σ d·(Ti − T̄),  T̄ &lt; Tb                    VDI 3807 (Gradtage Ti/Tb)
 * </pre>
 *
 * <p>DD, D degree-days [K·d], Tb base, Ti indoor and Te, T̄ outdoor temperature of an hour and mean
 * of a month [°C], d days of the month, k constant of the place [1/K]. Hitchin's formula as in
 * CIBSE TM41:2006 (memory), for temperate climates.
 *
 * <p>DD tells what a whole home takes, whose free heat warms it from Tb to Ti. What is
 * <em>added</em> to its losses or taken from them goes by D: free heat does not grow with the
 * losses, so that on a heated day each cubic metre more is warmed all the way to Ti.
 */
public final class DegreeDays {
  private DegreeDays() {}

  /**
   * A month's outdoor temperature.
   *
   * @param meanCelsius mean [°C]
   * @param days number of days, above 0
   */
  public record Month(double meanCelsius, double days) {
    /** Refuses months without days. */
    public Month {
      Bounds.finite("mean temperature [°C]", meanCelsius);
      Bounds.above("days", days, 0);
    }
  }

  /**
   * Degree-days D [K·d] up to the indoor temperature, of the months that are heated.
   *
   * @param indoorCelsius Ti, at least the base
   * @param baseCelsius Tb; months whose mean is as warm or warmer are not heated
   */
  public static double ofHeatedMonths(
      List<Month> months, double indoorCelsius, double baseCelsius) {
    Bounds.finite("base temperature [°C]", baseCelsius);
    Bounds.atLeast("indoor temperature [°C]", indoorCelsius, baseCelsius);
    return months.stream()
        .filter(m -> m.meanCelsius() < baseCelsius)
        .mapToDouble(m -> (indoorCelsius - m.meanCelsius()) * m.days())
        .sum();
  }

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
