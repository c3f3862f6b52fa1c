package org.drysill.assess.ventilation.adequacy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Direction;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.required.RuleFacts;
import org.drysill.reference.rules.BackgroundArea;
import org.drysill.reference.rules.BackgroundRule;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.Strategy;

/** Background ventilators of each room, of the home together, and by number. */
public final class BackgroundFindings {
  private final Home home;
  private final BackgroundRule rule;
  private final VentilatorAreas areas;
  private final VentilatorFinding finding;

  private BackgroundFindings(RuleSet rules, Home home, BackgroundRule rule) {
    this.home = home;
    this.rule = rule;
    this.areas = new VentilatorAreas(rule, RuleFacts.of(home));
    this.finding = new VentilatorFinding(rules);
  }

  /** The findings by the rule for the way in which the home is ventilated. */
  public static List<Finding> of(RuleSet rules, Home home, ProvidedAir air) {
    Strategy strategy = Strategies.of(air);
    return rules.background().stream()
        .filter(rule -> rule.general() && rule.strategy() == strategy)
        .findFirst()
        .map(rule -> new BackgroundFindings(rules, home, rule).all())
        .orElseGet(() -> List.of(notAssessed(rules, strategy)));
  }

  private static Finding notAssessed(RuleSet rules, Strategy strategy) {
    return new Finding(
        "ventilation.background.total",
        "Background ventilators",
        Optional.empty(),
        Verdict.UNKNOWN,
        Direction.NONE,
        Optional.empty(),
        Optional.empty(),
        rules.named()
            + ": no area of background ventilators is known for a home with "
            + strategy.word()
            + " ventilation; not assessed.",
        Optional.empty(),
        List.of());
  }

  private List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    rooms().forEach(room -> findings.addAll(ofRoom(room)));
    if (!findings.isEmpty()) {
      findings.addAll(totals());
      rule.count().ifPresent(count -> findings.add(finding.count(home, count)));
    }
    return findings;
  }

  private List<RoomFacts> rooms() {
    return home.rooms().stream().filter(room -> areas.of(room).isPresent()).toList();
  }

  private List<Finding> ofRoom(RoomFacts room) {
    BackgroundArea row = areas.of(room).orElseThrow();
    String id = "room." + room.id() + ".background";
    FoundVentilators found = FoundVentilators.in(List.of(room));
    Stream<Finding> printed =
        Stream.of(finding.area(id, Optional.of(room), found, row, row.area().value()));
    Stream<Finding> also =
        row.alsoPrinted().stream()
            .map(other -> finding.alsoPrinted(id, Optional.of(room), found, other, 1));
    return Stream.concat(printed, also).toList();
  }

  /** The home together; where a document prints two figures for a room, by both. */
  private List<Finding> totals() {
    FoundVentilators found = FoundVentilators.in(rooms());
    String id = "ventilation.background.total";
    double total =
        rooms().stream().mapToDouble(r -> areas.of(r).orElseThrow().area().value()).sum();
    BackgroundArea first = areas.of(rooms().get(0)).orElseThrow();
    List<Finding> findings = new ArrayList<>();
    findings.add(finding.withLimits(finding.area(id, Optional.empty(), found, first, total), rule));
    first
        .alsoPrinted()
        .forEach(
            other ->
                findings.add(
                    finding.alsoPrinted(id, Optional.empty(), found, other, rooms().size())));
    return findings;
  }
}
