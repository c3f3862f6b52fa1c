package org.drysill.assess.ventilation;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.ventilation.required.RuleFacts;
import org.drysill.physics.Airflow;
import org.drysill.reference.rules.ExtractRate;
import org.drysill.reference.rules.PurgeRule;
import org.drysill.reference.rules.RoomGroup;
import org.drysill.reference.rules.RuleCatalogue;
import org.drysill.reference.rules.RuleSet;
import org.drysill.survey.YesNo;
import org.drysill.yaml.Quantity;

/** What rule sets ask of single rooms of a home, side by side. */
final class RoomRules {
  private static final Set<RoomGroup> ROOMS =
      Set.of(RoomGroup.KITCHEN, RoomGroup.BATHROOM, RoomGroup.SANITARY);

  private final Home home;

  private RoomRules(Home home) {
    this.home = home;
  }

  /** Every rule set that asks something of a single room, the governing one first. */
  static List<RoomRule> of(Home home, RuleSet governing, RuleCatalogue rules) {
    RoomRules all = new RoomRules(home);
    return Stream.concat(
            Stream.of(governing),
            rules.all().stream().filter(set -> !set.id().equals(governing.id())))
        .map(set -> all.rule(set, set.equals(governing)))
        .filter(rule -> !rule.asks().isEmpty() || rule.airing().isPresent())
        .toList();
  }

  private RoomRule rule(RuleSet set, boolean governing) {
    List<ExtractRate> rows = set.extract().stream().filter(this::holds).toList();
    Optional<Double> airing = set.purge().flatMap(PurgeRule::airChange).map(Quantity::value);
    return new RoomRule(
        set.id(),
        set.title(),
        set.edition(),
        set.place(),
        governing,
        rows.stream().map(this::ask).toList(),
        airing,
        Stream.concat(
                rows.stream().map(ExtractRate::source),
                set.purge().filter(p -> airing.isPresent()).map(PurgeRule::source).stream())
            .distinct()
            .toList());
  }

  /** Rows for rooms without outside wall are left out where this home has no such room. */
  private boolean holds(ExtractRate row) {
    return ROOMS.contains(row.room())
        && (row.when().isEmpty()
            || room(row.room())
                .flatMap(room -> room.room().externalWall())
                .filter(wall -> wall == YesNo.NO)
                .isPresent());
  }

  private Optional<RoomFacts> room(RoomGroup group) {
    return home.rooms().stream()
        .filter(room -> RuleFacts.group(room.room().use()).filter(g -> g == group).isPresent())
        .findFirst();
  }

  private RoomRule.Ask ask(ExtractRate row) {
    Optional<Double> volume = room(row.room()).map(room -> room.volume().likely());
    Optional<Airflow> flow =
        row.rate()
            .map(rate -> Airflow.m3PerSecond(rate.value()))
            .or(
                () ->
                    volume.map(v -> Airflow.ofAirChange(row.airChange().orElseThrow().value(), v)));
    return new RoomRule.Ask(
        row.room(),
        row.mode(),
        row.terminal(),
        row.airChange().map(Quantity::value),
        flow.map(Airflow::m3PerSecond),
        flow.flatMap(q -> volume.map(q::airChangePerHour)),
        flow.map(q -> q.airChangePerHour(home.volume().likely())));
  }
}
