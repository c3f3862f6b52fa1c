package org.drysill.assess.moisture;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.drysill.physics.Range;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.moisture.VapourBalance;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * The production that readings imply, G = q Δv: what leaves with the air that the home gets.
 *
 * <p>The flow is counted at indoor temperature, so the outdoor air is taken as warmed to it: Δv =
 * (pi − pe) / (461.5 Ti). With each side at its own temperature the excess would be lower by up to
 * 7 % of the outdoor content. A negative bound counts as 0: the air of a home does not make water
 * vanish.
 */
final class ImpliedProduction {
  private static final Citation SOURCE =
      Citation.of("ISO 13788", "2012", "Annex A, G = q Δv", How.MEMORY);

  private ImpliedProduction() {}

  static Figure of(HomeAir air, Figure provided) {
    Range flow = provided.value();
    Range excess = air.excessPressure().value();
    double celsius = air.temperature().likely();
    Range implied =
        new Range(
            production(excess.low(), celsius, flow.low()),
            production(excess.likely(), celsius, flow.likely()),
            production(excess.high(), celsius, flow.high()));
    return new Figure(
        "moisture.implied",
        "Water production that the readings imply",
        implied,
        Unit.MASS_RATE,
        Basis.CALCULATED,
        () -> working(air, provided));
  }

  private static double production(double excessPa, double celsius, double flow) {
    double excess = MoistAir.vapourContentKgM3(celsius, Math.max(0, excessPa));
    return VapourBalance.productionKgS(excess, flow);
  }

  private static Working working(HomeAir air, Figure provided) {
    return new Working(
        "G = q Δp / (461.5 × (Ti + 273.15))",
        List.of(
            Input.of("q", provided),
            Input.of("Δp", air.excessPressure()),
            Input.of("Ti", air.temperature())),
        List.of(SOURCE),
        Optional.of(
            "Outdoor air counted at indoor temperature, as the flow is. Readings of a moment:"
                + " the balance holds for means over days."));
  }
}
