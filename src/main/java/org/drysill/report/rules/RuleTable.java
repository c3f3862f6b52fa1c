package org.drysill.report.rules;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.RuleComparison;
import org.drysill.reference.rules.Counts;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/**
 * What every rule set asks of the whole home, in four units, and whether the air here is enough.
 */
final class RuleTable {
  private final Desk desk;
  private final Numbers numbers;
  private final List<RuleComparison> rules;

  RuleTable(Desk desk) {
    this.desk = desk;
    this.numbers = desk.numbers();
    this.rules = desk.subject().ventilation().comparisons();
  }

  Block table() {
    String flow = numbers.unit(Unit.AIRFLOW);
    return Grid.wide(
            "What each rule set asks of the whole home, and whether the air here reaches it",
            List.of(
                Cells.words("rule set", 58),
                Cells.words("what it is meant for"),
                Cells.numbers(flow, 9),
                Cells.numbers("ach", 9),
                Cells.numbers(flow + " a person", 13),
                Cells.numbers(numbers.unit(Unit.AIRFLOW_PER_AREA), 11),
                Cells.words("here", 17)),
            sorted().map(this::row).toList(),
            foot())
        .densely();
  }

  /** The governing one first, the others by name. */
  private Stream<RuleComparison> sorted() {
    return rules.stream()
        .sorted(
            Comparator.comparing((RuleComparison rule) -> !rule.governing())
                .thenComparing(rule -> RuleNames.set(rule, rules)));
  }

  private Row row(RuleComparison rule) {
    String air = rule.counts() == Counts.FANS_ONLY ? " *" : "";
    return new Row(
        List.of(
            Cells.text(RuleNames.of(rule, rules))
                .with(rule.required().map(desk.index()::mark).stream().toList()),
            Cells.text(meaning(rule)),
            Cells.text(asked(rule) + air),
            Cells.text(rule.airChange().map(numbers::plain).orElse(Cells.NOTHING)),
            Cells.text(rule.perPerson().map(numbers::plain).orElse(Cells.NOTHING)),
            Cells.text(rule.perFloorArea().map(numbers::plain).orElse(Cells.NOTHING)),
            Cells.verdict(rule.verdict())),
        rule.governing());
  }

  /** Rounded up, as everywhere where the home is held against it. */
  private String asked(RuleComparison rule) {
    return rule.required()
        .map(q -> numbers.plain(q.likely(), Unit.AIRFLOW, Rounding.UP))
        .orElse(Cells.NOTHING);
  }

  private static String meaning(RuleComparison rule) {
    return rule.missing().isEmpty()
        ? Words.sentence(rule.purpose())
        : "Needs a fact that was not surveyed.";
  }

  private String foot() {
    var provided = desk.subject().ventilation().provided();
    return "The first, in bold, governs here; all others are for comparison. Held against all outdoor"
        + " air, "
        + numbers.full(provided.wholeHome().value(), Unit.AIRFLOW, Rounding.DOWN)
        + "; those with * count fans only, "
        + numbers.full(provided.byFans().value(), Unit.AIRFLOW, Rounding.DOWN)
        + ". "
        + "†\u00a0From memory, not read again in the document. ‡\u00a0The same, and doubtful, so that"
        + " nothing is told by it. Documents, clauses and terms: by the numbers of the workings, and"
        + " under Sources.";
  }
}
