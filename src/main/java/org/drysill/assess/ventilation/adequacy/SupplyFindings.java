package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.required.Demand;
import org.drysill.assess.ventilation.required.RuleFacts;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.SingleRoomRule;
import org.drysill.survey.FanKind;
import org.drysill.survey.YesNo;

/**
 * The supply of heat-recovery units in habitable rooms that were added to a home, against the share
 * of the whole-home rate that a rule set prints for them.
 */
public final class SupplyFindings {
  private final FlowText text;
  private final Home home;
  private final Figure wholeHome;
  private final Demand demand;
  private final Citation source;
  private final boolean everyRoomListed;

  private SupplyFindings(
      RuleSet rules, Home home, Figure wholeHome, Demand demand, Citation source) {
    this.text = new FlowText(rules.units());
    this.home = home;
    this.wholeHome = wholeHome;
    this.demand = demand;
    this.source = source;
    this.everyRoomListed = RuleFacts.of(home).rooms().isPresent();
  }

  /**
   * One for each added habitable room with a heat-recovery unit of its own.
   *
   * @param rules the governing rule set
   * @param home the home; its habitable rooms are those that the survey lists
   * @param air its fans
   * @param wholeHome the whole-home rate; empty where a fact is missing
   * @param demand where it comes from
   */
  public static List<Finding> of(
      RuleSet rules, Home home, ProvidedAir air, Optional<Figure> wholeHome, Demand demand) {
    Optional<Citation> source =
        rules.singleRoomHeatRecovery().flatMap(SingleRoomRule::addedRoomByVolume);
    return source
        .flatMap(s -> wholeHome.map(q -> new SupplyFindings(rules, home, q, demand, s)))
        .map(findings -> findings.all(air))
        .orElse(List.of());
  }

  private List<Finding> all(ProvidedAir air) {
    return home.rooms().stream()
        .filter(RoomFacts::habitable)
        .filter(room -> room.room().added().filter(added -> added == YesNo.YES).isPresent())
        .filter(room -> !units(air, room).isEmpty())
        .map(room -> finding(room, units(air, room)))
        .toList();
  }

  private static List<FanFlow> units(ProvidedAir air, RoomFacts room) {
    return air.fansIn(room.id()).stream()
        .filter(
            fan ->
                fan.fan().kind() == FanKind.ALTERNATING_HEAT_RECOVERY
                    || fan.fan().kind() == FanKind.SIMULTANEOUS_HEAT_RECOVERY)
        .toList();
  }

  private Finding finding(RoomFacts room, List<FanFlow> units) {
    String id = "room." + room.id() + ".supply";
    Range flow =
        units.stream().map(FanFlow::supplyWhileRunning).reduce(Range.exactly(0), Range::plus);
    Figure asked = asked(id, room);
    boolean unstated = units.stream().anyMatch(fan -> !fan.stated());
    Verdict compared = Verdict.atLeast(flow, asked.value());
    boolean open = unstated || (compared == Verdict.SHORT && !everyRoomListed);
    Verdict verdict = Asked.sure(open ? Verdict.UNKNOWN : compared, demand.confidence());
    String names = units.stream().map(FanFlow::name).collect(Collectors.joining(" and "));
    return new Finding(
        id,
        Asked.capital(room.name()) + " supply",
        Optional.of(room.id()),
        verdict,
        Direction.AT_LEAST,
        Optional.of(
            Asked.computed(
                id + ".provided",
                "supply to the " + room.name() + " while it runs",
                flow,
                Unit.AIRFLOW,
                "q = Σ c × q_running",
                units.stream().map(fan -> Input.of("q_running", fan.running())).toList(),
                List.of())),
        Optional.of(asked),
        Asked.capital(names)
            + ": "
            + text.provided(flow)
            + " in, averaged over a cycle; "
            + text.required(asked.value().high())
            + " asked, the room's share of the whole-home rate by volume.",
        verdict == Verdict.UNKNOWN
            ? Optional.of(settle(names, unstated || compared == Verdict.UNKNOWN))
            : Optional.empty(),
        List.of(source));
  }

  /** Rooms that are not listed would make the room's share smaller. */
  private String settle(String names, boolean byFlow) {
    if (Asked.doubtful(demand.confidence())) {
      return Asked.lookUp(demand.sources().get(0));
    }
    return byFlow
        ? "Measure the flow at " + names + " at its usual setting."
        : "List every habitable room of the home with its floor area.";
  }

  private Figure asked(String id, RoomFacts room) {
    List<RoomFacts> habitable = home.rooms().stream().filter(RoomFacts::habitable).toList();
    Range others =
        habitable.stream()
            .filter(r -> !r.equals(room))
            .map(r -> r.volume().value())
            .reduce(Range.exactly(0), Range::plus);
    Range own = room.volume().value();
    Range share =
        new Range(
            own.low() / (own.low() + others.high()),
            own.likely() / (own.likely() + others.likely()),
            own.high() / (own.high() + others.low()));
    return Asked.computed(
        id + ".required",
        "supply asked of a heat-recovery unit in the " + room.name(),
        wholeHome.value().times(share),
        Unit.AIRFLOW,
        "q = q_whole × V_room / Σ V_habitable",
        List.of(Input.of("q_whole", wholeHome), Input.of("V_room", room.volume())),
        List.of(source));
  }
}
