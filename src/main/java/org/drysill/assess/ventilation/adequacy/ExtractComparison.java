package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drysill.assess.Direction;
import org.drysill.assess.Finding;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.adequacy.WetRoomRates.Asking;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.physics.Range;
import org.drysill.reference.rules.ExtractMode;
import org.drysill.reference.rules.ExtractRate;
import org.drysill.reference.rules.RuleSet;

/** The extract of a wet room in one mode against its printed rate. */
final class ExtractComparison {
  private final RuleSet rules;
  private final RoomExtract way;
  private final Asking asking;
  private final Range flow;

  private ExtractComparison(RuleSet rules, RoomExtract way, Asking asking) {
    this.rules = rules;
    this.way = way;
    this.asking = asking;
    this.flow = way.flow();
  }

  /**
   * Compares.
   *
   * @param rules the rule set
   * @param way the fans that take air out
   * @param nothing the fans of the room that count nothing, to be named
   */
  static Finding of(RuleSet rules, RoomExtract way, List<FanFlow> nothing) {
    return new WetRoomRates(rules, way.room())
        .asking(way.mode(), way.terminal())
        .map(asking -> new ExtractComparison(rules, way, asking).finding(nothing))
        .orElseGet(() -> noRate(rules, way.room(), Optional.of(way)));
  }

  /** What is found where the rule set prints no rate for the room. */
  static Finding noRate(RuleSet rules, RoomFacts room, Optional<RoomExtract> way) {
    String how = way.map(w -> w.mode().word() + " ").orElse("");
    return new Finding(
        "room." + room.id() + ".extract",
        Asked.capital(room.name()) + " extract",
        Optional.of(room.id()),
        Verdict.UNKNOWN,
        Direction.AT_LEAST,
        way.map(w -> w.figure("", w.flow())),
        Optional.empty(),
        rules.named() + ": no rate of " + how + "extract is known for such a room; not assessed.",
        Optional.empty(),
        List.of());
  }

  private Finding finding(List<FanFlow> nothing) {
    Verdict verdict = verdict();
    return new Finding(
        "room." + way.room().id() + ".extract",
        Asked.capital(way.room().name()) + " extract",
        Optional.of(way.room().id()),
        verdict,
        Direction.AT_LEAST,
        Optional.of(way.figure("", flow)),
        Optional.of(asking.rate()),
        because(verdict) + named(nothing),
        verdict == Verdict.UNKNOWN ? Optional.of(settle()) : Optional.empty(),
        asking.rows().stream().map(ExtractRate::source).distinct().toList());
  }

  /** A flow that nobody stated, or a boost that nobody measured, leaves it open. */
  private Verdict verdict() {
    Verdict compared = Verdict.atLeast(flow, asking.rate().value());
    boolean open = way.unstated() || (compared == Verdict.SHORT && mayReachIt());
    return Asked.sure(open ? Verdict.UNKNOWN : compared, asking.confidence());
  }

  /** True where the high rate of a continuous fan was not measured and may be enough. */
  private boolean mayReachIt() {
    return way.mode() == ExtractMode.CONTINUOUS
        && way.mostIfDeclared() >= asking.rate().value().low();
  }

  private String because(Verdict verdict) {
    FlowText text = new FlowText(rules.units());
    String has = Asked.capital(way.names()) + ": " + text.provided(flow) + " out while running, ";
    String need = text.required(asking.rate().value().high()) + " asked of " + kind() + " extract";
    return switch (verdict) {
      case MEETS -> has + need + ".";
      case SHORT ->
          has
              + need
              + "; at least "
              + text.required(asking.rate().value().low() - flow.high())
              + " short.";
      case UNKNOWN -> has + need + "; what is not known is too wide to tell.";
    };
  }

  private String kind() {
    return way.mode() == ExtractMode.CONTINUOUS
        ? "continuous (high rate)"
        : way.mode().word() + asking.rows().get(0).terminal().map(t -> " " + t.word()).orElse("");
  }

  private static String named(List<FanFlow> nothing) {
    return nothing.stream()
        .map(f -> " " + Asked.capital(f.name()) + ": " + f.why())
        .collect(Collectors.joining());
  }

  private String settle() {
    if (Asked.doubtful(asking.confidence())) {
      return Asked.lookUp(asking.rows().get(0).source());
    }
    String setting =
        way.mode() == ExtractMode.CONTINUOUS ? " at its highest setting, the boost," : "";
    return "Measure the flow at "
        + way.names()
        + setting
        + " with a flow hood, doors and windows shut.";
  }
}
