package org.drysill.physics.flow;

import static org.drysill.physics.Temperature.toKelvin;

import org.drysill.physics.Bounds;

/**
 * Air change from a tracer such as CO₂ in one well-mixed zone; ASTM E741-11 and ISO 12569:2017
 * (memory).
 *
 * <pre>
 * decay    n = ln((C0 − Cb) / (C1 − Cb)) / Δt
 *          u(n) = (1/Δt)·√((u/(C0 − Cb))² + (u/(C1 − Cb))² + ((1/(C0 − Cb) − 1/(C1 − Cb))·ub)²)
 * steady   q = G / (C − Cb)
 * </pre>
 *
 * <p>n air change [1/h], Δt time [h]; C concentrations and Cb the background, all of one unit
 * [ratio], u and ub their standard uncertainties; G emission and q flow [m³/s]. Vapour is no such
 * tracer: fabric and furniture buffer it, and its decay gives n/M instead of n.
 */
public final class TracerGas {
  private static final double RESPIRATORY_QUOTIENT = 0.85;

  /** 0.000211 l/s·kPa·d/(MJ·K) as printed, in m³. */
  private static final double PERSON = 0.000211e-3;

  private TracerGas() {}

  /** Air change n [1/h] from two readings of a decay; C0 and C1 above the background. */
  public static double airChangeOfDecayPerHour(
      double start, double end, double background, double hours) {
    return Math.log(above(start, background) / above(end, background))
        / Bounds.above("time [h]", hours, 0);
  }

  /** Standard uncertainty u(n) [1/h] of a decay between two readings. */
  public static double uncertaintyOfDecayPerHour(
      double start,
      double end,
      double background,
      double hours,
      double uReading,
      double uBackground) {
    double first = 1 / above(start, background);
    double last = 1 / above(end, background);
    double readings = Bounds.atLeast("uncertainty of a reading", uReading, 0);
    double offset =
        (first - last) * Bounds.atLeast("uncertainty of the background", uBackground, 0);
    double squared = readings * readings * (first * first + last * last) + offset * offset;
    return Math.sqrt(squared) / Bounds.above("time [h]", hours, 0);
  }

  /** Flow q [m³/s] from a steady concentration; all concentrations as ratio. */
  public static double steadyFlowM3S(double emissionM3S, double steady, double background) {
    return Bounds.atLeast("emission [m³/s]", emissionM3S, 0) / above(steady, background);
  }

  /**
   * CO₂ that a person breathes out [m³/s], Persily and de Jonge 2017 (formula from memory):
   * 0.000211·10⁻³·RQ·BMR·M·T/P.
   *
   * @param basalMjPerDay BMR, basal metabolic rate [MJ/d]
   * @param met M, activity [met]
   * @param celsius temperature of the air [°C]
   * @param pressurePa P [Pa]; the formula is printed for kPa
   */
  public static double personEmissionM3S(
      double basalMjPerDay, double met, double celsius, double pressurePa) {
    return PERSON
        * RESPIRATORY_QUOTIENT
        * Bounds.above("basal metabolic rate [MJ/d]", basalMjPerDay, 0)
        * Bounds.above("activity [met]", met, 0)
        * toKelvin(Bounds.inside("temperature [°C]", celsius, -50, 60))
        / (Bounds.above("pressure [Pa]", pressurePa, 0) / 1000);
  }

  private static double above(double concentration, double background) {
    Bounds.atLeast("background concentration", background, 0);
    return Bounds.above("concentration", concentration, background) - background;
  }
}
