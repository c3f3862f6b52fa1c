package org.drysill.assess.surfaces.months;

import org.drysill.reference.Citation;
import org.drysill.reference.Sourced;
import org.drysill.reference.surfaces.SurfaceTables;

/**
 * What a surface must keep to.
 *
 * @param limit relative humidity at the surface that it must stay below [1]
 * @param coldNights true where it is judged on cold nights, false on the month's mean
 * @param atLimit what reaching the limit means
 * @param source where the limit is printed
 */
public record Criterion(double limit, boolean coldNights, Risk atLimit, Citation source) {
  /** Opaque surfaces: the monthly mean humidity at the surface must give mould no chance. */
  public static Criterion opaque(SurfaceTables tables) {
    Sourced limit = tables.surfaces().mouldLimit();
    return new Criterion(limit.likely(), false, Risk.MOULD, limit.source());
  }

  /** Glass: it must stay dry on a cold night. */
  public static Criterion glass(SurfaceTables tables) {
    Sourced limit = tables.surfaces().condensationLimit();
    return new Criterion(limit.likely(), true, Risk.CONDENSATION, limit.source());
  }

  /** The risk at a relative humidity at the surface [1]; equality with a limit fails. */
  Risk risk(double surfaceHumidity) {
    if (surfaceHumidity >= 1) {
      return Risk.CONDENSATION;
    }
    return surfaceHumidity >= limit ? atLimit : Risk.NONE;
  }
}
