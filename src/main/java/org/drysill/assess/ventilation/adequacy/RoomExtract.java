package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.physics.Range;
import org.drysill.reference.rules.ExtractMode;
import org.drysill.reference.rules.Terminal;
import org.drysill.survey.FanKind;

/**
 * The fans of a wet room that take air out of it in one mode.
 *
 * @param room the room
 * @param mode how they run
 * @param fans the fans; none where nothing takes air out
 */
record RoomExtract(RoomFacts room, ExtractMode mode, List<FanFlow> fans) {

  /** What they take out together while they run, at their highest known setting [m³/s]. */
  Range flow() {
    return fans.stream()
        .map(fan -> fan.extractAtBoost().orElse(fan.extractWhileRunning()))
        .reduce(Range.exactly(0), Range::plus);
  }

  /**
   * What they may take out at a setting that nobody measured [m³/s]: what is declared, where it is
   * declared.
   */
  double mostIfDeclared() {
    return fans.stream().mapToDouble(RoomExtract::most).sum();
  }

  private static double most(FanFlow fan) {
    double known = fan.extractAtBoost().orElse(fan.extractWhileRunning()).high();
    double declared =
        fan.fan()
            .declaredFlow()
            .map(q -> q.high() * fan.counting().extractShare())
            .orElse(Double.POSITIVE_INFINITY);
    return fan.boost().isPresent() ? known : Math.max(known, declared);
  }

  /** True where at least one of the flows rests on nothing that the survey says. */
  boolean unstated() {
    return fans.stream().anyMatch(fan -> !fan.stated());
  }

  Terminal terminal() {
    return fans.stream().anyMatch(fan -> fan.fan().kind() == FanKind.EXTRACT_HOOD)
        ? Terminal.HOOD
        : Terminal.ELSEWHERE;
  }

  /** True where heat-recovery units of the room do it. */
  boolean byHeatRecovery() {
    return fans.stream()
        .allMatch(
            fan ->
                fan.fan().kind() == FanKind.ALTERNATING_HEAT_RECOVERY
                    || fan.fan().kind() == FanKind.SIMULTANEOUS_HEAT_RECOVERY);
  }

  String names() {
    return fans.stream().map(FanFlow::name).collect(Collectors.joining(" and "));
  }

  Figure figure(String suffix, Range flow) {
    return Asked.computed(
        "room." + room.id() + ".extract.provided" + suffix,
        "extract from the " + room.name() + " while it runs",
        flow,
        Unit.AIRFLOW,
        "q = Σ c × q_running",
        fans.stream().map(RoomExtract::input).toList(),
        List.of());
  }

  private static Input input(FanFlow fan) {
    Figure used = fan.boost().orElse(fan.running());
    Basis basis = used.basis();
    return new Input(
        "q",
        fan.name()
            + ", of which "
            + fan.counting().extractShare()
            + " goes out averaged over a cycle"
            + fan.inMotion().map(m -> ", its pauses left out").orElse(""),
        used.value(),
        Unit.AIRFLOW,
        basis,
        Optional.of(used.id()));
  }
}
