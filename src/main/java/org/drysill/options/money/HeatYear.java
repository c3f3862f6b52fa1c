package org.drysill.options.money;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.physics.energy.VentilationHeat;

/**
 * Energy for heat that leaves a home in a year, by the months of its climate.
 *
 * <p>The balance temperature is the usual indoor temperature less what free heat warms the home by;
 * months warmer than it count nothing (EN ISO 13789 and EN ISO 52016-1, by month).
 *
 * @param home the home
 * @param gains by how much free heat warms it [K]
 */
record HeatYear(Home home, Range gains) {

  /** Energy bought for each W/K that is lost, in a year [kWh/a per W/K]. */
  Range perWattPerKelvin() {
    Range useful = new Range(useful(gains.high()), useful(gains.likely()), useful(gains.low()));
    return useful.dividedBy(home.money().heatingEfficiency().value());
  }

  /** Energy bought for each m³/s of outdoor air, in a year [kWh/a per m³/s]. */
  Range perFlow() {
    return perWattPerKelvin().times(VentilationHeat.USUAL_CAPACITY_J_M3K);
  }

  /** What the heat of a year follows from, beside the months of the climate. */
  List<Working.Input> inputs() {
    Range balance = new Range(balance(gains.high()), balance(gains.likely()), balance(gains.low()));
    return List.of(
        Working.Input.of("Tb", "balance temperature", balance, Unit.CELSIUS, Basis.ASSUMED),
        Working.Input.of("η", home.money().heatingEfficiency()));
  }

  /** Hours of the year in months that are heated [h]. */
  double heatedHours() {
    double balance = balance(gains.likely());
    return home.climate().months().stream()
        .filter(m -> m.temperature() < balance)
        .mapToDouble(m -> m.days() * 24.0)
        .sum();
  }

  private double useful(double freeKelvin) {
    List<VentilationHeat.Month> months =
        home.climate().months().stream()
            .map(m -> new VentilationHeat.Month(m.temperature(), m.days()))
            .toList();
    return VentilationHeat.heatKwh(1, months, balance(freeKelvin));
  }

  private double balance(double freeKelvin) {
    return home.setpoint().likely() - freeKelvin;
  }
}
