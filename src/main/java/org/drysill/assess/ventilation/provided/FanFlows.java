package org.drysill.assess.ventilation.provided;

import java.util.List;
import java.util.Map;
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
import org.drysill.assess.ventilation.ducts.FanAtWork;
import org.drysill.assess.ventilation.provided.FanFlow.Counting;
import org.drysill.physics.Range;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Fan;
import org.drysill.yaml.Quantity;

/** What each fan of a survey does. */
final class FanFlows {
  private final RunningFlow running;
  private final RunTime time;
  private final HalfCycle halfCycle;
  private final List<FanFlow> fans;

  FanFlows(Home home, VentilationDefaults defaults, Map<String, LoggedTurns> turns) {
    running = new RunningFlow(home, defaults);
    time = new RunTime(defaults);
    halfCycle = new HalfCycle(defaults.turning(), turns);
    fans =
        home.rooms().stream()
            .flatMap(room -> room.room().fans().stream().map(fan -> flow(room, fan)))
            .toList();
  }

  List<FanFlow> all() {
    return fans;
  }

  List<Assumption> assumptions() {
    return Stream.of(running.assumptions(), halfCycle.assumptions(), time.assumptions())
        .flatMap(List::stream)
        .toList();
  }

  private FanFlow flow(RoomFacts room, Fan fan) {
    Counting counting = FanClasses.counting(fan);
    String name = name(room, fan);
    boolean moves = counting != Counting.NOTHING;
    Optional<FanAtWork> atWork = moves ? running.atWork(fan, name) : Optional.empty();
    Figure flow =
        moves ? running.of(fan, name, atWork) : nothing(fan, "running", name, Unit.AIRFLOW);
    Optional<Figure> motion = moves ? halfCycle.inMotion(fan, name, flow) : Optional.empty();
    Figure share =
        moves ? time.shareOfDay(fan, name) : nothing(fan, "share_of_day", name, Unit.PERCENT);
    return new FanFlow(
        fan,
        room.id(),
        name,
        counting,
        FanClasses.why(fan),
        flow,
        atWork,
        motion,
        atWork.isPresent() || fan.measuredFlow().isPresent() || fan.declaredFlow().isPresent(),
        moves ? running.boost(fan, name) : Optional.empty(),
        share,
        mean(fan, "supply", "outdoor air by " + name, flow, motion, share, counting.supplyShare()),
        mean(
            fan,
            "extract",
            "air taken out by " + name,
            flow,
            motion,
            share,
            counting.extractShare()),
        moves ? running.derating(fan, atWork) : Optional.empty(),
        moves ? power(fan, name, flow, motion, counting) : Optional.empty());
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
      Fan fan,
      String what,
      String name,
      Figure flow,
      Optional<Figure> motion,
      Figure share,
      double part) {
    Range moving = motion.map(Figure::value).orElse(Range.exactly(1));
    Input of =
        Input.of(
            "c",
            "share of the flow that goes this way, over a cycle",
            Range.exactly(part),
            Unit.RATIO,
            Basis.CALCULATED);
    return new Figure(
        "fan." + fan.id() + "." + what,
        name + ", averaged over time",
        flow.value().times(share.value()).times(part).times(moving),
        Unit.AIRFLOW,
        weaker(motion.map(Figure::basis).orElse(flow.basis()), weaker(flow.basis(), share.basis())),
        () ->
            new Working(
                motion.isPresent() ? "q_mean = c × s × m × q" : "q_mean = c × s × q",
                Stream.concat(
                        Stream.of(of, Input.of("s", share), Input.of("q", flow)),
                        motion.stream().map(m -> Input.of("m", m)))
                    .toList(),
                List.of(),
                Optional.of(FanClasses.why(fan))));
  }

  /** Power by the flow that is exchanged, supplied or extracted, averaged over a cycle. */
  private static Optional<Figure> power(
      Fan fan, String name, Figure flow, Optional<Figure> motion, Counting counting) {
    double part = Math.max(counting.supplyShare(), counting.extractShare());
    Range moving = motion.map(Figure::value).orElse(Range.exactly(1)).times(part);
    return fan.power()
        .filter(p -> flow.value().low() * moving.low() > 0)
        .map(p -> power(fan, name, p, flow, moving));
  }

  private static Figure power(Fan fan, String name, Quantity power, Figure flow, Range part) {
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
                        part,
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
