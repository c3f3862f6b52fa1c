package org.drysill.assess.ventilation.provided;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.provided.FanFlow.Counting;
import org.drysill.physics.Range;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Fan;
import org.drysill.yaml.Quantity;

/** What each fan of a survey does. */
final class FanFlows {
  private final RunningFlow running;
  private final RunTime time;
  private final List<FanFlow> fans;

  FanFlows(Home home, VentilationDefaults defaults) {
    running = new RunningFlow(defaults, home.survey().visit().instruments());
    time = new RunTime(defaults);
    fans =
        home.rooms().stream()
            .flatMap(room -> room.room().fans().stream().map(fan -> flow(room, fan)))
            .toList();
  }

  List<FanFlow> all() {
    return fans;
  }

  List<Assumption> assumptions() {
    return Stream.concat(running.assumptions().stream(), time.assumptions().stream()).toList();
  }

  private FanFlow flow(RoomFacts room, Fan fan) {
    Counting counting = FanClasses.counting(fan.kind());
    String name = name(room, fan);
    boolean moves = counting != Counting.NOTHING;
    Figure flow = moves ? running.of(fan, name) : nothing(fan, "running", name, Unit.AIRFLOW);
    Figure share =
        moves ? time.shareOfDay(fan, name) : nothing(fan, "share_of_day", name, Unit.PERCENT);
    return new FanFlow(
        fan,
        room.id(),
        name,
        counting,
        FanClasses.why(fan),
        flow,
        fan.measuredFlow().isPresent() || fan.declaredFlow().isPresent(),
        moves ? running.boost(fan, name) : Optional.empty(),
        share,
        mean(fan, "supply", "outdoor air by " + name, flow, share, counting.supplyShare()),
        mean(fan, "extract", "air taken out by " + name, flow, share, counting.extractShare()),
        moves ? running.derating(fan) : Optional.empty(),
        moves ? power(fan, name, flow, counting) : Optional.empty());
  }

  private static String name(RoomFacts room, Fan fan) {
    return fan.name().orElseGet(() -> "the " + fan.kind().word() + " in the " + room.name());
  }

  private static Figure nothing(Fan fan, String what, String name, Unit unit) {
    return new Figure(
        "fan." + fan.id() + "." + what,
        what.replace('_', ' ') + " of " + name,
        Range.exactly(0),
        unit,
        Basis.DECLARED,
        () -> new Working("none", List.of(), List.of(), Optional.of(FanClasses.why(fan))));
  }

  private static Figure mean(
      Fan fan, String what, String name, Figure flow, Figure share, double part) {
    return new Figure(
        "fan." + fan.id() + "." + what,
        name + ", averaged over time",
        flow.value().times(share.value()).times(part),
        Unit.AIRFLOW,
        weaker(flow.basis(), share.basis()),
        () ->
            new Working(
                "q_mean = c × s × q",
                List.of(
                    Input.of(
                        "c",
                        "share of the flow that goes this way, over a cycle",
                        Range.exactly(part),
                        Unit.RATIO,
                        Basis.CALCULATED),
                    Input.of("s", share),
                    Input.of("q", flow)),
                List.of(),
                Optional.of(FanClasses.why(fan))));
  }

  /** Power by the flow that is exchanged, supplied or extracted, averaged over a cycle. */
  private static Optional<Figure> power(Fan fan, String name, Figure flow, Counting counting) {
    double part = Math.max(counting.supplyShare(), counting.extractShare());
    return fan.power()
        .filter(p -> flow.value().low() > 0)
        .map(p -> power(fan, name, p, flow, part));
  }

  private static Figure power(Fan fan, String name, Quantity power, Figure flow, double part) {
    return new Figure(
        "fan." + fan.id() + ".specific_fan_power",
        "specific fan power of " + name,
        power.range().dividedBy(flow.value().times(part)),
        Unit.SPECIFIC_FAN_POWER,
        weaker(Basis.DECLARED, flow.basis()),
        () ->
            new Working(
                "SFP = P / (c × q)",
                List.of(
                    Input.of("P", "power", power.range(), Unit.WATT, Basis.DECLARED),
                    Input.of(
                        "c",
                        "share of the flow that is exchanged, over a cycle",
                        Range.exactly(part),
                        Unit.RATIO,
                        Basis.CALCULATED),
                    Input.of("q", flow)),
                List.of(),
                Optional.empty()));
  }

  static Basis weaker(Basis a, Basis b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
