package org.drysill.assess.recovery;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.physics.energy.VentilationHeat;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;
import org.drysill.yaml.Quantity;

/** Flow through a unit, and the heat that it keeps in at the temperatures of its tests. */
final class SavedHeat {
  private static final double SUPPLY_SHARE_OF_CYCLE = 0.5;
  private static final Citation CAPACITY =
      new Citation(
          "EN ISO 13789", Optional.empty(), Optional.of("0.34 Wh/(m³·K) of air"), How.MEMORY);

  private final InstrumentErrors errors;
  private final RecoveryDefaults defaults;

  SavedHeat(InstrumentErrors errors, RecoveryDefaults defaults) {
    this.errors = errors;
    this.defaults = defaults;
  }

  /** The flow that was measured [m³/s]. */
  Optional<Figure> measuredFlow(String id, Fan fan) {
    return fan.measuredFlow()
        .map(
            f ->
                flow(
                    id,
                    errors.flow(f.value(), f.instrument()),
                    Basis.MEASURED,
                    "q as measured",
                    List.of()));
  }

  /** The flow while it runs [m³/s]: measured, else declared less what use takes away. */
  Optional<Figure> flow(String id, Fan fan) {
    return measuredFlow(id, fan)
        .or(
            () ->
                fan.declaredFlow()
                    .map(
                        d ->
                            flow(
                                id,
                                d.range().times(defaults.declaredFlowInUse().range()),
                                Basis.DECLARED,
                                "q = declared flow × share left in use",
                                List.of(defaults.declaredFlowInUse().source()))));
  }

  private static Figure flow(
      String id, Range value, Basis basis, String formula, List<Citation> sources) {
    return new Figure(
        id + ".flow",
        "flow while it runs",
        value,
        Unit.AIRFLOW,
        basis,
        () -> new Working(formula, List.of(), sources, Optional.empty()));
  }

  /** What the unit keeps in, by its flow, its ratio and the mean difference of its tests. */
  HeatSaved of(String id, Fan fan, Figure flow, Figure ratio, Range difference) {
    Figure exchange = exchange(id, fan, flow);
    Range watt =
        exchange
            .value()
            .times(ratio.value())
            .times(difference)
            .times(VentilationHeat.USUAL_CAPACITY_J_M3K);
    Figure heat =
        figure(
            id,
            "heat_saved",
            "heat kept in at the test",
            watt,
            "Q = 0.34 Wh/(m³·K) · q · η · (Ti - Te)",
            List.of(
                Input.of("q", exchange),
                Input.of("η", ratio),
                Input.of("Ti - Te", "difference", difference, Unit.KELVIN, Basis.MEASURED)));
    Optional<Figure> power = fan.power().map(p -> power(id, p));
    return new HeatSaved(exchange, heat, power, power.map(p -> net(id, heat, p)));
  }

  private static Figure exchange(String id, Fan fan, Figure flow) {
    boolean alternating = fan.kind() == FanKind.ALTERNATING_HEAT_RECOVERY;
    Range value = alternating ? flow.value().times(SUPPLY_SHARE_OF_CYCLE) : flow.value();
    return new Figure(
        id + ".exchange",
        "outdoor air through the exchanger over time",
        value,
        Unit.AIRFLOW,
        flow.basis(),
        () ->
            new Working(
                alternating ? "q = q_phase / 2" : "q = q_running",
                List.of(Input.of(alternating ? "q_phase" : "q_running", flow)),
                List.of(),
                alternating
                    ? Optional.of("An alternating unit supplies air half of the time.")
                    : Optional.empty()));
  }

  private static Figure power(String id, Quantity power) {
    return new Figure(
        id + ".power",
        "electric power while it runs",
        power.range(),
        Unit.WATT,
        Basis.DECLARED,
        () -> new Working("P as stated", List.of(), List.of(), Optional.empty()));
  }

  private static Figure net(String id, Figure heat, Figure power) {
    return figure(
        id,
        "net_saved",
        "heat kept in less fan power",
        heat.value().minus(power.value()),
        "Q - P",
        List.of(Input.of("Q", heat), Input.of("P", power)));
  }

  private static Figure figure(
      String id, String what, String name, Range value, String formula, List<Input> inputs) {
    return new Figure(
        id + "." + what,
        name,
        value,
        Unit.WATT,
        Basis.CALCULATED,
        () -> new Working(formula, inputs, List.of(CAPACITY), Optional.empty()));
  }
}
