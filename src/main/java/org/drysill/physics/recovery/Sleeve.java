package org.drysill.physics.recovery;

import org.drysill.physics.Bounds;

/**
 * Heat that a thin tube through a wall conducts along its axis, and how cold its inner end gets.
 * Derived; an estimate: the wall around the tube and the air in it are left out, for the whole of
 * it see EN ISO 10211.
 *
 * <pre>
 * K = λ·π·D·t / L          f = (1/K + 1/(he·Ae)) / (1/K + 1/(he·Ae) + 1/(hi·Ai))
 * </pre>
 *
 * @param conductivity λ [W/(m·K)]
 * @param diameterM D [m]
 * @param wallM t, thickness of the tube's own wall [m]; much thinner than D
 * @param lengthM L, through the wall [m]
 */
public record Sleeve(double conductivity, double diameterM, double wallM, double lengthM) {
  /** Refuses measures that are not above zero. */
  public Sleeve {
    Bounds.above("conductivity [W/(m·K)]", conductivity, 0);
    Bounds.above("diameter [m]", diameterM, 0);
    Bounds.above("wall thickness [m]", wallM, 0);
    Bounds.above("length [m]", lengthM, 0);
  }

  /** Axial conductance K [W/K]. */
  public double axialConductance() {
    return conductivity * Math.PI * diameterM * wallM / lengthM;
  }

  /** Area of a lip that sticks out of the wall by a length [m], its outer face: π·D·length [m²]. */
  public double lipAreaM2(double lipM) {
    return Math.PI * diameterM * Bounds.above("length of the lip [m]", lipM, 0);
  }

  /**
   * Temperature factor f of the inner lip.
   *
   * @param conductance K [W/K]
   * @param inner hi·Ai, heat transfer at the inner lip [W/K]
   * @param outer he·Ae, heat transfer at the outer lip [W/K]
   */
  public static double innerEndFactor(double conductance, double inner, double outer) {
    double beyond =
        1 / Bounds.above("axial conductance [W/K]", conductance, 0)
            + 1 / Bounds.above("outer heat transfer [W/K]", outer, 0);
    return beyond / (beyond + 1 / Bounds.above("inner heat transfer [W/K]", inner, 0));
  }

  /**
   * Fin parameter m = √(h / (λ·t)) [1/m] of the tube wall with one face in air; within about 1/m of
   * its end a lip takes part in the heat exchange.
   *
   * @param coefficient h, heat transfer coefficient [W/(m²·K)]
   */
  public double finParameter(double coefficient) {
    return Math.sqrt(
        Bounds.above("heat transfer coefficient [W/(m²·K)]", coefficient, 0)
            / (conductivity * wallM));
  }
}
