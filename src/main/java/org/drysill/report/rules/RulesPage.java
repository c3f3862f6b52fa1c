package org.drysill.report.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.RuleComparison;
import org.drysill.reference.rules.Counts;
import org.drysill.report.block.Block;
import org.drysill.report.block.ChartBlock;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** The comparison of rule sets: what each asks, what it is meant for, and what is met here. */
public final class RulesPage {
  private static final int NAMED = 3;

  private final Desk desk;
  private final List<RuleComparison> rules;

  private RulesPage(Desk desk) {
    this.desk = desk;
    this.rules = desk.subject().ventilation().comparisons();
  }

  /** The page; nothing where there is no rule set. */
  public static Optional<Section> of(Desk desk) {
    RulesPage page = new RulesPage(desk);
    return page.rules.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Section("rules", page.heading(), "Rule sets side by side", false, page.blocks()));
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Prose(List.of(), "", "", said()));
    blocks.add(new RuleTable(desk).table());
    RoomRuleTable rooms = new RoomRuleTable(desk);
    rooms.table().ifPresent(blocks::add);
    rooms.told().ifPresent(blocks::add);
    new RuleDots(desk)
        .chart()
        .ifPresent(
            chart ->
                blocks.add(
                    new ChartBlock(
                        List.of(),
                        "chart-rules",
                        chart,
                        Long.toString(Math.round(chart.heightMm())),
                        true)));
    return blocks;
  }

  private List<RuleComparison> with(Verdict verdict) {
    return rules.stream()
        .filter(rule -> rule.required().isPresent() && rule.verdict() == verdict)
        .toList();
  }

  private String heading() {
    long told = rules.stream().filter(rule -> rule.required().isPresent()).count();
    return "Of "
        + Words.count((int) told, "published rate", "published rates")
        + " for a whole home, the air here surely reaches "
        + many(Verdict.MEETS)
        + ", perhaps "
        + many(Verdict.UNKNOWN)
        + ", and surely misses "
        + many(Verdict.SHORT);
  }

  private String many(Verdict verdict) {
    int rules = with(verdict).size();
    return rules == 0 ? "none" : Words.number(rules);
  }

  /** What governs, and those that are met for certain: the table has them all. */
  private String said() {
    String governing =
        rules.stream()
            .filter(RuleComparison::governing)
            .findFirst()
            .map(
                rule ->
                    rule.required()
                            .map(q -> desk.numbers().one(q.likely(), Unit.AIRFLOW, Rounding.UP))
                            .map(q -> q + " are asked by ")
                            .orElse("By ")
                        + rule.title()
                        + ", which governs here. ")
            .orElse("");
    return governing + named("Surely reached: ", Verdict.MEETS) + byFans();
  }

  /** Much of what is missed may be so because leaks do not count there. */
  private String byFans() {
    long fans = with(Verdict.SHORT).stream().filter(r -> r.counts() == Counts.FANS_ONLY).count();
    return fans == 0
        ? ""
        : "Of those missed, " + Words.number((int) fans) + " count the air of fans only.";
  }

  private String named(String lead, Verdict verdict) {
    List<String> names =
        with(verdict).stream().map(rule -> RuleNames.plain(rule, rules)).distinct().toList();
    return names.isEmpty() ? "" : lead + Words.list(names, NAMED, "other", "others") + ". ";
  }
}
