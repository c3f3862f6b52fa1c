package org.drysill.assess.ventilation.provided;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.ducts.DuctFlows;
import org.drysill.assess.ventilation.ducts.FanAtWork;
import org.drysill.physics.Range;
import org.drysill.reference.ventilation.Derating;
import org.drysill.reference.ventilation.UnstatedFlow;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.CurvePoint;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;
import org.drysill.survey.Instrument;
import org.drysill.survey.MeasuredFlow;
import org.drysill.yaml.Quantity;

/**
 * The flow of a fan while it runs: measured where it was measured, else calculated from its curve
 * and its duct (of a stack, from warmth and its duct), else declared and derated, else a stated
 * range.
 */
final class RunningFlow {
  private final VentilationDefaults defaults;
  private final List<Instrument> instruments;
  private final Range indoor;
  private final double outdoor;
  private final DuctFlows ducts;
  private final List<Assumption> assumptions = new ArrayList<>();

  RunningFlow(Home home, VentilationDefaults defaults) {
    this.defaults = defaults;
    instruments = home.survey().visit().instruments();
    indoor = home.setpoint().value();
    outdoor = ColdSeason.of(home.climate(), defaults).outdoor();
    ducts = new DuctFlows(defaults.ducts());
  }

  /** What was taken for granted so far. */
  List<Assumption> assumptions() {
    return Stream.concat(assumptions.stream(), ducts.assumptions().stream()).toList();
  }

  /** Where it works by its duct; empty where its flow was measured or the duct is not known. */
  Optional<FanAtWork> atWork(Fan fan, String name) {
    if (fan.measuredFlow().isPresent()) {
      return Optional.empty();
    }
    return fan.kind() == FanKind.PASSIVE_STACK
        ? ducts.ofStack(fan, name, indoor, outdoor)
        : ducts.ofFan(fan, name);
  }

  Figure of(Fan fan, String name, Optional<FanAtWork> atWork) {
    String id = "fan." + fan.id() + ".running";
    String what = "flow of " + name + " while it runs";
    return fan.measuredFlow()
        .map(flow -> measured(id, what, flow))
        .or(() -> atWork.map(FanAtWork::flow))
        .or(() -> declared(fan).map(flow -> derated(id, what, flow, fan, name)))
        .orElseGet(() -> unstated(id, what, fan, name));
  }

  /** What its maker declares; of a curve alone its last point, the flow without any duct. */
  static Optional<Quantity> declared(Fan fan) {
    List<CurvePoint> curve = fan.fanCurve();
    return fan.declaredFlow()
        .or(
            () ->
                curve.isEmpty()
                    ? Optional.empty()
                    : Optional.of(curve.get(curve.size() - 1).flow()));
  }

  Optional<Figure> boost(Fan fan, String name) {
    return fan.boostFlow()
        .map(flow -> measured("fan." + fan.id() + ".boost", "flow of " + name + " at boost", flow));
  }

  /** What became of a declared flow; empty where it is known better or none is stated. */
  Optional<String> derating(Fan fan, Optional<FanAtWork> atWork) {
    return fan.measuredFlow().isPresent() || atWork.isPresent()
        ? Optional.empty()
        : declared(fan).map(flow -> deratingText(flow, row(fan)));
  }

  private static String deratingText(Quantity flow, Derating derating) {
    return "Declared "
        + flow.written()
        + ", of which "
        + derating.factor().written()
        + " is taken to be left ("
        + derating.run().word()
        + "); a planning assumption."
        + derating.note().map(note -> " " + note).orElse("");
  }

  private Derating row(Fan fan) {
    return defaults.derating(DuctRuns.of(fan, defaults));
  }

  private Figure measured(String id, String what, MeasuredFlow flow) {
    Optional<Double> accuracy =
        flow.instrument()
            .flatMap(i -> instruments.stream().filter(x -> x.id().equals(i)).findFirst())
            .flatMap(Instrument::flowAccuracy)
            .map(Quantity::value);
    double value = flow.value().value();
    boolean stated = flow.value().isRange();
    double share = accuracy.orElse(defaults.flowAccuracy().value().value());
    if (!stated && accuracy.isEmpty()) {
      assumeAccuracy();
    }
    Range range = stated ? flow.value().range() : Range.around(value, value * share);
    return new Figure(
        id,
        what,
        range,
        Unit.AIRFLOW,
        Basis.MEASURED,
        () ->
            new Working(
                "q = reading ± accuracy",
                List.of(
                    Input.of("q", "reading", flow.value().range(), Unit.AIRFLOW, Basis.MEASURED),
                    Input.of(
                        "a",
                        "accuracy of the instrument, share of the reading",
                        Range.exactly(share),
                        Unit.PERCENT,
                        accuracy.isPresent() ? Basis.DECLARED : Basis.ASSUMED)),
                accuracy.isPresent() ? List.of() : List.of(defaults.flowAccuracy().source()),
                Optional.empty()));
  }

  private void assumeAccuracy() {
    String id = "ventilation.flow_accuracy";
    if (assumptions.stream().noneMatch(a -> a.id().equals(id))) {
      assumptions.add(
          new Assumption(
              id,
              "accuracy of flow readings",
              "± " + defaults.flowAccuracy().value().written() + " of the reading",
              "The survey names no instrument with an accuracy of flow.",
              "List the flow instrument with its accuracy of flow, and name it at the reading.",
              defaults.flowAccuracy().source()));
    }
  }

  private Figure derated(String id, String what, Quantity flow, Fan fan, String name) {
    Derating derating = row(fan);
    Range factor = derating.factor().range();
    assumptions.add(
        new Assumption(
            "fan." + fan.id() + ".derating",
            "flow of " + name + " as fitted",
            derating.factor().written() + " of the declared " + flow.written(),
            "Fans are declared at a pressure that fitted ones seldom meet ("
                + derating.run().word()
                + ").",
            measureIt(name) + orCalculate(fan),
            derating.source()));
    return new Figure(
        id,
        what,
        flow.range().times(factor),
        Unit.AIRFLOW,
        Basis.ASSUMED,
        () ->
            new Working(
                "q = d × q_declared",
                List.of(
                    Input.of("d", "derating", factor, Unit.RATIO, Basis.ASSUMED),
                    Input.of(
                        "q_declared", "declared flow", flow.range(), Unit.AIRFLOW, Basis.DECLARED)),
                List.of(derating.source()),
                derating.note()));
  }

  private Figure unstated(String id, String what, Fan fan, String name) {
    UnstatedFlow row = defaults.unstated(FanClasses.sort(fan.kind()));
    assumptions.add(
        new Assumption(
            "fan." + fan.id() + ".flow",
            "flow of " + name,
            row.flow().written(),
            "The survey gives no flow of it, measured or declared.",
            measureIt(name) + orCalculate(fan),
            row.source()));
    return new Figure(
        id,
        what,
        row.flow().range(),
        Unit.AIRFLOW,
        Basis.ASSUMED,
        () ->
            new Working(
                "q = planning range",
                List.of(
                    Input.of(
                        "q", "flow of such fans", row.flow().range(), Unit.AIRFLOW, Basis.ASSUMED)),
                List.of(row.source()),
                Optional.empty()));
  }

  /** Which facts would let the flow be calculated. */
  private static String orCalculate(Fan fan) {
    List<String> missing = DuctFlows.missing(fan);
    boolean can = DuctFlows.hasOneDuct(fan.kind()) || fan.kind() == FanKind.PASSIVE_STACK;
    return can && !missing.isEmpty()
        ? " Or note of it and of its duct " + listed(missing) + "; its flow can then be calculated."
        : "";
  }

  private static String listed(List<String> things) {
    int last = things.size() - 1;
    return last == 0
        ? things.get(0)
        : String.join(", ", things.subList(0, last)) + " and " + things.get(last);
  }

  private static String measureIt(String name) {
    return "Measure the flow at "
        + name
        + " with a flow hood while it runs, doors and windows shut.";
  }
}
