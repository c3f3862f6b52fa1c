package org.drysill.physics.zones;

import org.drysill.physics.Bounds;
import org.drysill.physics.Temperature;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.surface.GlassCondensate;

/**
 * A cold surface on which the vapour of a zone settles while it is above the surface's saturation:
 * G = k · max(0; v − vs). What has settled runs off and does not come back.
 *
 * @param zone the zone that it faces
 * @param transferM3S k [m³/s], at least 0: the flow of air whose drying would take as much
 */
public record Pane(int zone, double transferM3S) {
  /** Refuses a negative transfer. */
  public Pane {
    Bounds.inside("zone of a pane", zone, 0, 999);
    Bounds.atLeast("transfer to a pane [m³/s]", transferM3S, 0);
  }

  /**
   * A pane by the Lewis relation, k = β A · 461.5 T.
   *
   * @param zone the zone that it faces
   * @param areaM2 A, at least 0
   * @param convectiveCoefficient hc [W/(m²·K)], β = 7·10⁻⁹ hc
   * @param celsius T at which contents are counted
   */
  public static Pane of(int zone, double areaM2, double convectiveCoefficient, double celsius) {
    Bounds.atLeast("area of a pane [m²]", areaM2, 0);
    double transfer = GlassCondensate.transferCoefficient(convectiveCoefficient) * areaM2;
    return new Pane(zone, transfer * MoistAir.VAPOUR_GAS_CONSTANT * Temperature.toKelvin(celsius));
  }
}
