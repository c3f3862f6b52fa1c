package org.drysill.assess.surfaces.months;

import org.drysill.assess.OutdoorClimate;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.reference.surfaces.SurfaceDefaults;

/**
 * The least vapour pressure excess indoors at which a surface is at risk in a month: the judgement
 * of {@link RiskMonths} turned round, so that many excesses can be judged by one comparison.
 *
 * <pre>Δp = limit · psat(Tsi) − pe,   Tsi = Te + f·(Ti − Te)</pre>
 *
 * @param outdoor the outdoor temperature that it is judged at [°C]
 * @param pascal Δp; 0 where the outdoor air alone is too moist, infinite where indoor air cannot
 *     hold so much
 */
public record CriticalExcess(double outdoor, double pascal) {
  private static final Range NONE = Range.exactly(0);

  /**
   * That of a surface in a month, at the likely values of climate and factor.
   *
   * @param month the outdoor means
   * @param setpoint indoor temperature while it is heated [°C]
   * @param factor temperature factor f of the surface
   * @param criterion what it must keep to
   * @param defaults what is taken for granted
   */
  public static CriticalExcess of(
      OutdoorClimate.Month month,
      double setpoint,
      double factor,
      Criterion criterion,
      SurfaceDefaults defaults) {
    MonthAir dry = MonthAir.of(month, setpoint, t -> NONE, criterion.coldNights(), defaults);
    double surface = TemperatureFactor.surfaceCelsius(factor, dry.indoor(), dry.outdoor());
    double limit = Math.min(1, criterion.limit()) * Iso13788Vapour.saturationPressurePa(surface);
    boolean reached = limit <= Iso13788Vapour.saturationPressurePa(dry.indoor());
    return new CriticalExcess(
        dry.outdoor(),
        reached ? Math.max(0, limit - dry.vapour().likely()) : Double.POSITIVE_INFINITY);
  }
}
