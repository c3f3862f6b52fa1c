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
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.reference.rules.Confidence;
import org.drysill.reference.rules.PurgeRule;
import org.drysill.reference.rules.PurgeShare;
import org.drysill.reference.rules.RuleSet;

/** Openings for quick airing against the share of the floor that a rule set prints. */
public final class PurgeFindings {
  private final PurgeRule rule;
  private final FlowText text;

  private PurgeFindings(PurgeRule rule, RuleSet rules) {
    this.rule = rule;
    this.text = new FlowText(rules.units());
  }

  /** One for each habitable room; none where the rule set prints nothing about airing. */
  public static List<PurgeOpening> ofHabitableRooms(RuleSet rules, Home home) {
    return of(rules, home.rooms().stream().filter(RoomFacts::habitable).toList());
  }

  /** One for each wet room, for those rules by which openings will do instead of a fan. */
  public static List<PurgeOpening> ofWetRooms(RuleSet rules, Home home) {
    return of(rules, home.rooms().stream().filter(RoomFacts::wet).toList());
  }

  private static List<PurgeOpening> of(RuleSet rules, List<RoomFacts> rooms) {
    return rules.purge().filter(rule -> !rule.openings().isEmpty()).stream()
        .flatMap(rule -> rooms.stream().map(room -> new PurgeFindings(rule, rules).opening(room)))
        .toList();
  }

  private PurgeOpening opening(RoomFacts room) {
    List<AiringOpening> openings =
        room.room().windows().stream().map(w -> new AiringOpening(w, rule)).toList();
    return new PurgeOpening(
        finding(room, openings),
        rule.airChange().map(n -> flow(room, n.value())),
        Airing.through(room, openings, rule));
  }

  private Figure flow(RoomFacts room, double perHour) {
    return Asked.computed(
        id(room) + ".flow_required",
        "air asked of the " + room.name() + " while it is aired",
        room.volume().value().times(Airflow.ofAirChange(perHour, 1).m3PerSecond()),
        Unit.AIRFLOW,
        "q = n × V",
        List.of(
            Input.of("n", "air changes", Range.exactly(perHour), Unit.AIR_CHANGE, Basis.PUBLISHED),
            Input.of("V", room.volume())),
        List.of(rule.source()));
  }

  private static String id(RoomFacts room) {
    return "room." + room.id() + ".purge";
  }

  /** The share that openings are held against: the one of all that count, else the least. */
  private double share(List<AiringOpening> openings) {
    List<Double> shares =
        openings.stream()
            .flatMap(o -> o.row().flatMap(PurgeShare::share).stream())
            .map(q -> q.value())
            .distinct()
            .toList();
    return shares.size() == 1
        ? shares.get(0)
        : rule.openings().stream()
            .flatMap(row -> row.share().stream())
            .mapToDouble(q -> q.value())
            .min()
            .orElseThrow();
  }

  private Finding finding(RoomFacts room, List<AiringOpening> openings) {
    double share = share(openings);
    Figure provided = provided(room, openings, share);
    Figure required = required(room, share);
    boolean known = !openings.isEmpty() && openings.stream().allMatch(AiringOpening::known);
    Verdict compared = Verdict.atLeast(provided.value(), required.value());
    boolean open = compared != Verdict.MEETS && !known;
    Verdict verdict = Asked.sure(open ? Verdict.UNKNOWN : compared, confidence());
    return new Finding(
        id(room),
        Asked.capital(room.name()) + " airing",
        Optional.of(room.id()),
        verdict,
        Direction.AT_LEAST,
        Optional.of(provided),
        Optional.of(required),
        because(openings, provided, required),
        verdict == Verdict.UNKNOWN ? Optional.of(settle(room, openings)) : Optional.empty(),
        List.of(rule.source()));
  }

  private Figure provided(RoomFacts room, List<AiringOpening> openings, double share) {
    Range counted =
        openings.stream().map(o -> o.counted(share)).reduce(Range.exactly(0), Range::plus);
    return Asked.computed(
        id(room) + ".provided",
        "openings of the " + room.name() + " as they count",
        counted,
        Unit.SQUARE_METRE,
        "A = Σ w × h × s / s_row",
        openings.stream()
            .flatMap(
                o ->
                    o.area().stream()
                        .map(
                            a ->
                                Input.of(
                                    "w × h",
                                    "opening of " + o.window().name().orElse(o.window().id()),
                                    a,
                                    Unit.SQUARE_METRE,
                                    Basis.MEASURED)))
            .toList(),
        rule.openings().stream().map(PurgeShare::source).distinct().toList());
  }

  private Figure required(RoomFacts room, double share) {
    return Asked.computed(
        id(room) + ".required",
        "openings asked of the " + room.name(),
        room.floorArea().value().times(share),
        Unit.SQUARE_METRE,
        "A = s × A_floor",
        List.of(
            Input.of(
                "s", "share of the floor", Range.exactly(share), Unit.PERCENT, Basis.PUBLISHED),
            Input.of("A_floor", room.floorArea())),
        rule.openings().stream().map(PurgeShare::source).distinct().toList());
  }

  private String because(List<AiringOpening> openings, Figure provided, Figure required) {
    long narrow =
        openings.stream()
            .filter(o -> o.row().filter(row -> row.share().isEmpty()).isPresent())
            .count();
    String stay =
        switch ((int) narrow) {
          case 0 -> "";
          case 1 -> " One of its windows does not open wide enough to count.";
          default -> " " + narrow + " of its windows do not open wide enough to count.";
        };
    return text.opening(provided.value().low())
        + " of opening counts, "
        + text.openingRequired(required.value().high())
        + " asked."
        + stay;
  }

  /** The least sure of the shares that are printed. */
  private Optional<Confidence> confidence() {
    return rule.openings().stream()
        .flatMap(row -> row.confidence().stream())
        .max(Confidence::compareTo);
  }

  private String settle(RoomFacts room, List<AiringOpening> openings) {
    if (Asked.doubtful(confidence())) {
      return Asked.lookUp(rule.source());
    }
    return openings.isEmpty()
        ? "List the windows of the " + room.name() + " and how they open."
        : "Measure the clear width and height of each window of the "
            + room.name()
            + " that opens, and the angle to which it opens.";
  }
}
