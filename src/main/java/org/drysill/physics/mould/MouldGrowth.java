package org.drysill.physics.mould;

import org.drysill.physics.Bounds;

/**
 * The rate at which mould grows on a surface, Hukka and Viitanen 1999 with the classes of Ojanen et
 * al. 2010, as in ANSI/ASHRAE Standard 160-2016 (all from memory).
 *
 * <pre>
 * RHcrit = max(RHmin ; −0.00267·T³ + 0.160·T² − 3.13·T + 100)    T ≤ 20 °C, else RHmin
 * tM1    = exp(−0.68·ln T − 13.9·ln RH + 0.14·W − 0.33·SQ + 66.02)
 * dM/dt  = k1·k2 / (7·tM1)          k2 = max(0 ; 1 − exp(2.3·(M − Mmax)))
 * Mmax   = A + B·x − C·x²           x  = (RHcrit − RH) / (RHcrit − 100)
 * </pre>
 *
 * <p>T temperature of the surface [°C]; RH relative humidity at it [%]; tM1 weeks to index 1; M
 * mould index, 0 to 6 (1 seen under a microscope, 3 seen by eye, 6 all over); SQ = 0, sawn. Fitted
 * to timber between 75 and 100 % and between 0.1 and 60 °C. At and below 0 °C and below RHcrit
 * nothing grows. It ranks surfaces; it does not foretell what will be seen on one.
 */
public final class MouldGrowth {
  /** Temperature [°C] below which the regression does not hold and nothing is taken to grow. */
  public static final double LOWEST_CELSIUS = 0.1;

  private static final double HIGHEST_CELSIUS = 60;
  private static final double DAYS_PER_WEEK = 7;
  private static final double POLYNOMIAL_TO_CELSIUS = 20;

  private MouldGrowth() {}

  /** RHcrit [%], the least humidity at which mould grows at a temperature [°C]. */
  public static double criticalHumidity(double celsius, MouldSensitivity surface) {
    return celsius > POLYNOMIAL_TO_CELSIUS
        ? surface.leastHumidity()
        : Math.max(surface.leastHumidity(), polynomial(celsius));
  }

  private static double polynomial(double t) {
    return ((-0.00267 * t + 0.160) * t - 3.13) * t + 100;
  }

  /**
   * tM1 [weeks], the time in steady conditions until growth is seen under a microscope, on timber.
   *
   * @param celsius T, 0.1 to 60 °C
   * @param humidity RH [%], above 0, 100 at most
   */
  public static double weeksToFirstGrowth(
      double celsius, double humidity, MouldSensitivity surface) {
    Bounds.inside("temperature [°C]", celsius, LOWEST_CELSIUS, HIGHEST_CELSIUS);
    Bounds.above("relative humidity [%]", humidity, 0);
    Bounds.inside("relative humidity [%]", humidity, 0, 100);
    return Math.exp(
        -0.68 * Math.log(celsius) - 13.9 * Math.log(humidity) + 0.14 * surface.timber() + 66.02);
  }

  /**
   * Mmax, the index that growth approaches in steady conditions; 0 below RHcrit.
   *
   * @param celsius T [°C]
   * @param humidity RH [%]
   * @return 0 to 6
   */
  public static double highestIndex(double celsius, double humidity, MouldSensitivity surface) {
    double critical = criticalHumidity(celsius, surface);
    return humidity <= critical || critical >= 100
        ? 0
        : surface.highestIndex((critical - humidity) / (critical - 100));
  }

  /**
   * dM/dt [1/day] at an index M; 0 where nothing grows.
   *
   * @param humidity RH [%], taken as 100 above 100
   */
  public static double ratePerDay(
      double celsius, double humidity, double index, MouldSensitivity surface) {
    double wet = Math.min(100, humidity);
    if (!grows(celsius, wet, surface)) {
      return 0;
    }
    double slowing = 1 - Math.exp(2.3 * (index - highestIndex(celsius, wet, surface)));
    return surface.growthFactor(index)
        * Math.max(0, slowing)
        / (DAYS_PER_WEEK * weeksToFirstGrowth(celsius, wet, surface));
  }

  /** Whether mould can grow at all at a temperature [°C] and relative humidity [%]. */
  public static boolean grows(double celsius, double humidity, MouldSensitivity surface) {
    return celsius >= LOWEST_CELSIUS
        && celsius <= HIGHEST_CELSIUS
        && humidity > criticalHumidity(celsius, surface);
  }
}
