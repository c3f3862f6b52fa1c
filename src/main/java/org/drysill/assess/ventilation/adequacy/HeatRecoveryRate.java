package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.adequacy.WetRoomRates.Asking;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.physics.Range;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.SingleRoomRule;

/** The continuous rate of a heat-recovery unit in its wet room, a share of the high rate. */
final class HeatRecoveryRate {
  private HeatRecoveryRate() {}

  static Optional<Finding> of(RuleSet rules, RoomExtract way) {
    if (!way.byHeatRecovery()) {
      return Optional.empty();
    }
    Optional<Asking> high = new WetRoomRates(rules, way.room()).asking(way.mode(), way.terminal());
    return rules.singleRoomHeatRecovery().flatMap(rule -> high.map(h -> of(rules, way, rule, h)));
  }

  private static Finding of(RuleSet rules, RoomExtract way, SingleRoomRule rule, Asking high) {
    Range running =
        way.fans().stream().map(FanFlow::extractWhileRunning).reduce(Range.exactly(0), Range::plus);
    Figure asked = asked(way, rule, high);
    Verdict compared = Verdict.atLeast(running, asked.value());
    Verdict verdict = Asked.sure(way.unstated() ? Verdict.UNKNOWN : compared, high.confidence());
    FlowText text = new FlowText(rules.units());
    return new Finding(
        "room." + way.room().id() + ".extract.continuous",
        Asked.capital(way.room().name()) + " extract, continuous rate",
        Optional.of(way.room().id()),
        verdict,
        Direction.AT_LEAST,
        Optional.of(way.figure(".continuous", running)),
        Optional.of(asked),
        Asked.capital(way.names())
            + ": "
            + text.provided(running)
            + " out all the time, "
            + text.required(asked.value().high())
            + " asked of a heat-recovery unit in its room.",
        verdict == Verdict.UNKNOWN
            ? Optional.of("Measure the flow at " + way.names() + " at its usual setting.")
            : Optional.empty(),
        List.of(rule.source()));
  }

  private static Figure asked(RoomExtract way, SingleRoomRule rule, Asking high) {
    double share = rule.continuousShareOfHigh().value();
    return Asked.computed(
        "room." + way.room().id() + ".extract.required.continuous",
        "continuous extract asked of a heat-recovery unit in the " + way.room().name(),
        high.rate().value().times(share),
        Unit.AIRFLOW,
        "q = s × q_high",
        List.of(
            Input.of("s", "share", Range.exactly(share), Unit.PERCENT, Basis.PUBLISHED),
            Input.of("q_high", high.rate())),
        List.of(rule.source()));
  }
}
