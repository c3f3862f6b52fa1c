package org.drysill.assess.surfaces.year;

import org.drysill.assess.OutdoorHours;
import org.drysill.physics.surface.MouldYear;
import org.drysill.physics.surface.PaneYear;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.reference.surfaces.MaterialSensitivity;
import org.drysill.reference.surfaces.SurfaceTables;

/** How a year of a surface is reckoned, from the tables. */
final class YearRules {
  private YearRules() {}

  /** The air outdoors as rooms and walls follow it. */
  static YearAir air(SurfaceTables tables, OutdoorHours hours) {
    return new YearAir(
        hours,
        (int) Math.round(tables.hours().memory().likely()),
        tables.defaults().freeRunningRise().likely());
  }

  /** An opaque surface. */
  static MouldYear.Surface wall(SurfaceTables tables, MaterialSensitivity sensitivity, int start) {
    return new MouldYear.Surface(
        sensitivity.sensitivity().physics(),
        tables.hours().mouldDecline().likely(),
        tables.surfaces().mouldLimit().likely(),
        start);
  }

  /** A pane. */
  static PaneYear.Pane pane(SurfaceTables tables, int start) {
    return new PaneYear.Pane(
        tables.defaults().paneFilm().likely(),
        tables.hours().visibleFilm().likely(),
        tables.hours().clingingFilm().likely(),
        (int) Math.round(tables.hours().morningHour().likely()),
        start);
  }

  /** Surfaces are clean and dry in the middle of the warmest month. */
  static int start(OutdoorHours hours) {
    int from = HourlyYear.firstHour(hours.warmestMonth());
    return (from + HourlyYear.firstHour(hours.warmestMonth() + 1)) / 2;
  }
}
