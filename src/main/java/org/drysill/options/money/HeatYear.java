package org.drysill.options.money;

import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.energy.DegreeDays;
import org.drysill.physics.energy.DegreeDays.Month;
import org.drysill.physics.energy.VentilationHeat;

/**
 * Energy for heat that is added to the losses of a home in a year, or spared, by the months of its
 * climate.
 *
 * <pre>Q = H·D·24 / η,   D = Σ d·(Ti − Te) of months with Te &lt; Tb,   Tb = Ti − gains</pre>
 *
 * <p>Months warmer than Tb are not heated: free heat suffices. In the others what is added is
 * warmed from Te to Ti and not only to Tb, for the free heat is spent on the losses that are there
 * already ({@link DegreeDays}).
 *
 * @param home the home
 * @param gains by how much free heat warms it [K]
 */
record HeatYear(Home home, Range gains) {
  /** What a flow q takes, to be written after what else multiplies it. */
  static final String OF_A_FLOW = "0.34 Wh/(m³·K)·q·D·24 h / η";

  /** Energy bought for each W/K that is lost, in a year [kWh/a per W/K]. */
  Range perWattPerKelvin() {
    return degreeDays()
        .times(VentilationHeat.heatKwh(1, 1))
        .dividedBy(home.money().heatingEfficiency().value());
  }

  /** Energy bought for each m³/s of outdoor air, in a year [kWh/a per m³/s]. */
  Range perFlow() {
    return perWattPerKelvin().times(VentilationHeat.USUAL_CAPACITY_J_M3K);
  }

  /** What the heat of a flow in a year follows from. */
  List<Input> inputs(Input... flow) {
    return Stream.concat(Stream.of(flow), inputs().stream()).toList();
  }

  /** What the heat of a year follows from, beside the months of the climate. */
  List<Input> inputs() {
    Range base = new Range(base(gains.high()), base(gains.likely()), base(gains.low()));
    return List.of(
        Input.of("Ti", home.setpoint()),
        Input.of(
            "Tb", "outdoors from which on nothing is heated", base, Unit.CELSIUS, Basis.ASSUMED),
        Input.of(
            "D",
            "degree-days Σ d·(Ti − Te) of months with Te < Tb",
            degreeDays(),
            Unit.KELVIN_DAYS,
            Basis.CALCULATED),
        Input.of("η", home.money().heatingEfficiency()));
  }

  /** Hours of the year in months that are heated [h]. */
  double heatedHours() {
    double base = base(gains.likely());
    return months().filter(m -> m.meanCelsius() < base).mapToDouble(m -> m.days() * 24.0).sum();
  }

  /** D, the more the less free heat there is [K·d]. */
  private Range degreeDays() {
    return new Range(degreeDays(gains.high()), degreeDays(gains.likely()), degreeDays(gains.low()));
  }

  private double degreeDays(double freeKelvin) {
    return DegreeDays.ofHeatedMonths(months().toList(), home.setpoint().likely(), base(freeKelvin));
  }

  private Stream<Month> months() {
    return home.climate().months().stream().map(m -> new Month(m.temperature(), m.days()));
  }

  private double base(double freeKelvin) {
    return home.setpoint().likely() - freeKelvin;
  }
}
