package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.assess.ventilation.required.RuleFacts;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.rules.BackgroundArea;
import org.drysill.reference.rules.BackgroundRule;
import org.drysill.reference.rules.Confidence;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.VentilatorCount;

/** Makes findings about background ventilators. */
final class VentilatorFinding {
  private final FlowText text;

  VentilatorFinding(RuleSet rules) {
    this.text = new FlowText(rules.units());
  }

  /** Area found against area asked [m²]. */
  Finding area(
      String id,
      Optional<RoomFacts> room,
      FoundVentilators found,
      BackgroundArea row,
      double askedM2) {
    return finding(id, room, found, askedM2, row.source(), row.confidence(), row.note().orElse(""));
  }

  /** The same by the other figure that the document prints, for a number of rooms. */
  Finding alsoPrinted(
      String id,
      Optional<RoomFacts> room,
      FoundVentilators found,
      BackgroundArea.AlsoPrinted other,
      int rooms) {
    return finding(
        id + ".also_printed",
        room,
        found,
        other.area().value() * rooms,
        other.source(),
        Optional.empty(),
        "This is the other figure that the document prints.");
  }

  private Finding finding(
      String id,
      Optional<RoomFacts> room,
      FoundVentilators found,
      double askedM2,
      Citation source,
      Optional<Confidence> confidence,
      String note) {
    String where = room.map(RoomFacts::name).orElse("home");
    Range area = found.area();
    Verdict compared = Verdict.atLeast(area, askedM2);
    boolean open = compared != Verdict.MEETS && !found.seenAll();
    Verdict verdict = Asked.sure(open ? Verdict.UNKNOWN : compared, confidence);
    return new Finding(
        id,
        Asked.capital(where) + ": background ventilators",
        room.map(RoomFacts::id),
        verdict,
        Direction.AT_LEAST,
        Optional.of(found.areaFigure(id + ".provided", "background ventilators of the " + where)),
        Optional.of(
            Asked.printed(
                id + ".required",
                "background ventilators asked of the " + where,
                askedM2,
                Unit.VENT_AREA,
                source)),
        text.ventilator(area.likely())
            + " found"
            + (found.seenAll() ? "" : " where it was looked")
            + ", "
            + text.ventilatorRequired(askedM2)
            + " of equivalent area asked."
            + (note.isEmpty() ? "" : " " + note),
        verdict == Verdict.UNKNOWN
            ? Optional.of(settle(where, confidence, source))
            : Optional.empty(),
        List.of(source));
  }

  private static String settle(String where, Optional<Confidence> confidence, Citation source) {
    return Asked.doubtful(confidence)
        ? Asked.lookUp(source)
        : "Look at every window of the "
            + where
            + " and note the equivalent area of its background ventilator, or that there is none.";
  }

  /** The same finding with the cases in which its rule does not hold. */
  Finding withLimits(Finding f, BackgroundRule rule) {
    String limits =
        rule.notValidWhen().isEmpty()
            ? ""
            : " It does not hold for "
                + String.join("; nor for ", rule.notValidWhen())
                + ": take expert advice there.";
    return new Finding(
        f.id(),
        f.subject(),
        f.room(),
        f.verdict(),
        f.direction(),
        f.provided(),
        f.required(),
        f.because() + " " + rule.situation() + limits,
        f.settledBy(),
        f.sources());
  }

  /** Number of ventilators found against the least number asked. */
  Finding count(Home home, VentilatorCount rule) {
    List<RoomFacts> rooms =
        home.rooms().stream()
            .filter(
                r ->
                    RuleFacts.group(r.room().use())
                        .filter(g -> VentilatorAreas.isAmong(rule.rooms(), g))
                        .isPresent())
            .toList();
    FoundVentilators found = FoundVentilators.in(rooms);
    int asked = rule.of(home.bedrooms());
    boolean reached = found.count() >= asked;
    Verdict compared = reached ? Verdict.MEETS : found.seenAll() ? Verdict.SHORT : Verdict.UNKNOWN;
    Verdict verdict = Asked.sure(compared, rule.confidence());
    String id = "ventilation.background.count";
    return new Finding(
        id,
        "Number of background ventilators",
        Optional.empty(),
        verdict,
        Direction.AT_LEAST,
        Optional.of(
            new Figure(
                id + ".provided",
                "number of background ventilators found",
                Range.exactly(found.count()),
                Unit.COUNT,
                Basis.DECLARED,
                () -> new Working("counted", List.of(), List.of(), Optional.empty()))),
        Optional.of(
            Asked.printed(
                id + ".required",
                "least number of background ventilators",
                asked,
                Unit.COUNT,
                rule.source())),
        found.count() + " found, " + asked + " asked at least.",
        verdict == Verdict.UNKNOWN
            ? Optional.of(settle("home", rule.confidence(), rule.source()))
            : Optional.empty(),
        List.of(rule.source()));
  }
}
