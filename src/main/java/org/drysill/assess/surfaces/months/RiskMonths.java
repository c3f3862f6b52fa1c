package org.drysill.assess.surfaces.months;

import java.util.function.DoubleFunction;
import org.drysill.assess.OutdoorClimate;
import org.drysill.physics.Range;
import org.drysill.reference.surfaces.SurfaceDefaults;

/**
 * How many months of a year a surface is at risk, where nothing else of its year is asked.
 *
 * @param likely months at risk at the likely values
 * @param possible months at risk at the unfavourable ends of all ranges
 */
public record RiskMonths(int likely, int possible) {

  /** The months of a year that is known. */
  public static RiskMonths of(MonthTable year) {
    return new RiskMonths(year.monthsAtRisk().size(), year.monthsPossiblyAtRisk().size());
  }

  /**
   * The months of a year to come, as {@link MonthTables} would find them.
   *
   * @param factor the temperature factor of the surface
   * @param setpoint indoor temperature while it is heated [°C]
   * @param climate outdoors by month
   * @param excess vapour pressure excess indoors [Pa] by outdoor temperature [°C]
   * @param criterion what it must keep to
   * @param defaults what is taken for granted
   */
  public static RiskMonths of(
      Range factor,
      double setpoint,
      OutdoorClimate climate,
      DoubleFunction<Range> excess,
      Criterion criterion,
      SurfaceDefaults defaults) {
    int likely = 0;
    int possible = 0;
    for (OutdoorClimate.Month month : climate.months()) {
      Range humidity =
          MonthRows.surfaceHumidity(
              MonthAir.of(month, setpoint, excess, criterion.coldNights(), defaults), factor);
      likely += criterion.risk(humidity.likely()) == Risk.NONE ? 0 : 1;
      possible += criterion.risk(humidity.high()) == Risk.NONE ? 0 : 1;
    }
    return new RiskMonths(likely, possible);
  }
}
