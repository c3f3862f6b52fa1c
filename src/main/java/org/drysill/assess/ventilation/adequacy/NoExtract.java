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
import org.drysill.reference.rules.Terminal;

/** What is found about a wet room from which no fan of the survey takes air out. */
final class NoExtract {
  private NoExtract() {}

  static Finding of(
      RuleSet rules,
      RoomFacts room,
      Optional<FanFlow> central,
      List<FanFlow> fansInRoom,
      List<PurgeOpening> purge) {
    WetRoomRates rates = new WetRoomRates(rules, room);
    Optional<Asking> asking =
        rates
            .asking(ExtractMode.INTERMITTENT, Terminal.ELSEWHERE)
            .or(() -> rates.asking(ExtractMode.CONTINUOUS, Terminal.ELSEWHERE));
    if (asking.isEmpty()) {
      return ExtractComparison.noRate(rules, room, Optional.empty());
    }
    if (central.isPresent()) {
      return finding(
          room,
          asking.get(),
          Verdict.UNKNOWN,
          central.get().name() + " may end in this room; the survey gives no flow at it here.",
          Optional.of("Measure the flow at the valve in the " + room.name() + "."));
    }
    Optional<Finding> openings =
        asking.get().openingsInstead() ? openings(room, purge) : Optional.empty();
    return openings
        .filter(o -> o.verdict() != Verdict.SHORT)
        .map(o -> byOpenings(room, asking.get(), o))
        .orElseGet(() -> none(rules, room, asking.get(), fansInRoom, rates));
  }

  private static Optional<Finding> openings(RoomFacts room, List<PurgeOpening> purge) {
    return purge.stream()
        .map(PurgeOpening::finding)
        .filter(f -> f.room().filter(r -> r.equals(room.id())).isPresent())
        .findFirst();
  }

  private static Finding byOpenings(RoomFacts room, Asking asking, Finding openings) {
    String text = "No fan takes air out; openings may do it instead here. ";
    return finding(
        room,
        asking,
        Asked.sure(openings.verdict(), asking.confidence()),
        text + openings.because(),
        openings.settledBy());
  }

  private static Finding none(
      RuleSet rules, RoomFacts room, Asking asking, List<FanFlow> fans, WetRoomRates rates) {
    FlowText text = new FlowText(rules.units());
    Verdict verdict = Asked.sure(Verdict.SHORT, asking.confidence());
    String seen =
        fans.isEmpty()
            ? "The survey lists no fan in the " + room.name() + "."
            : fans.stream()
                .map(f -> Asked.capital(f.name()) + ": " + f.why())
                .collect(Collectors.joining(" "));
    String hood =
        rates
            .asking(ExtractMode.INTERMITTENT, Terminal.HOOD)
            .filter(h -> h.rate().likely() < asking.rate().likely())
            .map(
                h ->
                    " With a hood that blows outside it would be "
                        + text.required(h.rate().likely())
                        + ".")
            .orElse("");
    return finding(
        room,
        asking,
        verdict,
        seen
            + " Nothing is taken out where "
            + text.required(asking.rate().value().high())
            + " is asked."
            + hood,
        verdict == Verdict.UNKNOWN
            ? Optional.of(Asked.lookUp(asking.rows().get(0).source()))
            : Optional.empty());
  }

  private static Finding finding(
      RoomFacts room, Asking asking, Verdict verdict, String because, Optional<String> settledBy) {
    RoomExtract nothing = new RoomExtract(room, ExtractMode.INTERMITTENT, List.of());
    return new Finding(
        "room." + room.id() + ".extract",
        Asked.capital(room.name()) + " extract",
        Optional.of(room.id()),
        verdict,
        Direction.AT_LEAST,
        Optional.of(nothing.figure("", Range.exactly(0))),
        Optional.of(asking.rate()),
        because,
        settledBy,
        asking.rows().stream().map(ExtractRate::source).distinct().toList());
  }
}
