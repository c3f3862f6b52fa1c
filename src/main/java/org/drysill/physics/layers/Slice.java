package org.drysill.physics.layers;

import java.util.Collections;
import java.util.List;
import org.drysill.physics.Bounds;

/**
 * A layer of a built-up element as heat and vapour meet it.
 *
 * @param resistance R, thermal resistance [m²·K/W]; 0 for a membrane
 * @param airLayerM sd = μ·d, vapour-equivalent thickness of still air [m], above 0
 */
public record Slice(double resistance, double airLayerM) {
  /** Thermal resistance above which ISO 13788 splits a layer [m²·K/W]. */
  public static final double THICKEST = 0.25;

  /** Refuses what lets no vapour be reckoned with. */
  public Slice {
    Bounds.atLeast("thermal resistance [m²·K/W]", resistance, 0);
    Bounds.above("vapour-equivalent air layer sd [m]", airLayerM, 0);
  }

  /**
   * A layer of a material: R = d/λ, sd = μ·d.
   *
   * @param thicknessM d [m], above 0
   * @param conductivity λ [W/(m·K)], above 0
   * @param vapourFactor μ [-], how many times better than air it holds vapour back
   */
  public static Slice of(double thicknessM, double conductivity, double vapourFactor) {
    Bounds.above("thickness [m]", thicknessM, 0);
    return new Slice(
        thicknessM / Bounds.above("conductivity [W/(m·K)]", conductivity, 0),
        thicknessM * Bounds.above("vapour resistance factor μ", vapourFactor, 0));
  }

  /** How many equal slices it is split into. */
  public int parts() {
    return Math.max(1, (int) Math.ceil(resistance / THICKEST - 1e-12));
  }

  /** Equal slices of at most {@value #THICKEST} m²·K/W each; ISO 13788:2012, 6.4 (memory). */
  List<Slice> split() {
    int parts = parts();
    return Collections.nCopies(parts, new Slice(resistance / parts, airLayerM / parts));
  }
}
