package org.drysill.assess.elements;

import java.util.List;
import java.util.function.DoubleFunction;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.surfaces.months.MonthAir;
import org.drysill.physics.Range;
import org.drysill.physics.layers.MonthClimate;
import org.drysill.reference.surfaces.SurfaceDefaults;

/**
 * The air on both sides of a wall through the year.
 *
 * @param climate outdoors by month
 * @param setpoint indoor temperature while it is heated [°C]
 * @param excess vapour pressure excess indoors [Pa] by outdoor temperature [°C]
 * @param defaults what is taken of free-running rooms
 */
record WallClimate(
    OutdoorClimate climate,
    double setpoint,
    DoubleFunction<Range> excess,
    SurfaceDefaults defaults) {
  /** Twelve months, January first. */
  List<MonthClimate> months(Side side) {
    return climate.months().stream().map(m -> month(m, side)).toList();
  }

  private MonthClimate month(OutdoorClimate.Month month, Side side) {
    MonthAir air = MonthAir.of(month, setpoint, excess, false, defaults);
    return new MonthClimate(
        air.indoor(),
        side.of(air.vapour()),
        air.outdoor(),
        side.of(MonthAir.outdoorVapour(month)),
        month.days());
  }

  /** The same with another moisture of the indoor air. */
  WallClimate with(DoubleFunction<Range> other) {
    return new WallClimate(climate, setpoint, other, defaults);
  }
}
