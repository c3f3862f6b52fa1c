package org.drysill.assess.surfaces.months;

import org.drysill.assess.OutdoorClimate;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.reference.surfaces.SurfaceDefaults;

/**
 * The least vapour pressure excess indoors at which a surface is at risk in a month: the judgement
 * of {@link RiskMonths} turned round, so that many excesses, factors and outdoor vapours can be
 * judged by one comparison each.
 *
 * <pre>Δp = limit · psat(Tsi) − pe,   Tsi = Te + f·(Ti − Te)</pre>
 *
 * @param outdoor the outdoor temperature that it is judged at [°C]
 * @param indoor indoor temperature [°C]
 * @param outdoorVapour pe [Pa]
 * @param limit the relative humidity at the surface at which it is at risk [1]
 * @param full the most that indoor air can hold [Pa]
 */
public record MonthLimit(
    double outdoor, double indoor, Range outdoorVapour, double limit, double full) {
  private static final Range NONE = Range.exactly(0);

  /**
   * That of a month.
   *
   * @param month the outdoor means
   * @param setpoint indoor temperature while it is heated [°C]
   * @param criterion what a surface must keep to
   * @param defaults what is taken for granted
   */
  public static MonthLimit of(
      OutdoorClimate.Month month, double setpoint, Criterion criterion, SurfaceDefaults defaults) {
    MonthAir dry = MonthAir.of(month, setpoint, t -> NONE, criterion.coldNights(), defaults);
    return new MonthLimit(
        dry.outdoor(),
        dry.indoor(),
        dry.vapour(),
        Math.min(1, criterion.limit()),
        Iso13788Vapour.saturationPressurePa(dry.indoor()));
  }

  /**
   * The critical excess Δp [Pa]; 0 where the outdoor air alone is too moist, infinite where indoor
   * air cannot hold so much.
   *
   * @param factor temperature factor f of the surface
   * @param outdoors vapour pressure outdoors, pe or another as likely [Pa]
   */
  public double criticalPa(double factor, double outdoors) {
    double surface = TemperatureFactor.surfaceCelsius(factor, indoor, outdoor);
    double bears = limit * Iso13788Vapour.saturationPressurePa(surface);
    return bears <= full ? Math.max(0, bears - outdoors) : Double.POSITIVE_INFINITY;
  }
}
