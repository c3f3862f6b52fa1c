package org.drysill.physics.flow;

import org.drysill.physics.Bounds;

/**
 * Infiltration of a building with mechanical ventilation, EN ISO 13789:2007, Annex C.2 (memory).
 *
 * <pre>
 * qx = V·n50·e / (1 + (f/e)·((qsu − qex) / (V·n50))²)
 * </pre>
 *
 * <p>qx additional flow through the envelope, qsu supply and qex extract flow; here [m³/s], the
 * quotient has no unit. e, f shelter coefficients of Table C.4 [1]. The total flow is max(qsu, qex)
 * + qx.
 *
 * @param shelterE e, above 0
 * @param shelterF f, above 0
 */
public record Iso13789Infiltration(double shelterE, double shelterF) {
  /** Refuses coefficients that are not above zero. */
  public Iso13789Infiltration {
    Bounds.above("shelter coefficient e", shelterE, 0);
    Bounds.above("shelter coefficient f", shelterF, 0);
  }

  /**
   * Infiltration qx [m³/s]; 0 for an envelope without leaks.
   *
   * @param leakage50M3S V·n50, leakage at 50 Pa [m³/s]
   */
  public double flowM3S(double leakage50M3S, double supplyM3S, double extractM3S) {
    Bounds.atLeast("leakage at 50 Pa [m³/s]", leakage50M3S, 0);
    Bounds.atLeast("supply flow [m³/s]", supplyM3S, 0);
    Bounds.atLeast("extract flow [m³/s]", extractM3S, 0);
    if (leakage50M3S == 0) {
      return 0;
    }
    double unbalance = (supplyM3S - extractM3S) / leakage50M3S;
    return leakage50M3S * shelterE / (1 + shelterF / shelterE * unbalance * unbalance);
  }
}
