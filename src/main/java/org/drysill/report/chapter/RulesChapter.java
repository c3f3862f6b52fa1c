package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.QuotedAirChange;
import org.drysill.assess.ventilation.RuleComparison;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.RuleBars;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** What other rule sets would ask of the same home, and what quoted air-change figures mean. */
final class RulesChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<RuleComparison> rules = desk.subject().ventilation().comparisons();
    if (rules.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            "People are told very different air-change figures, because each is meant for something"
                + " else. Below, every rule set is applied to this home; only the first governs here."));
    if (!desk.subject().ventilation().quoted().isEmpty()) {
      blocks.add(quoted(desk));
    }
    chart(desk, rules).ifPresent(c -> blocks.add(ChartBlocks.wide("rules", c)));
    blocks.add(table(desk, rules));
    return Optional.of(
        new Section("rules", heading(desk, rules), "Rule sets side by side", false, blocks));
  }

  private static String heading(Desk desk, List<RuleComparison> rules) {
    List<Double> flows = new ArrayList<>();
    rules.forEach(r -> r.required().ifPresent(f -> flows.add(f.likely())));
    if (flows.size() < 2) {
      return "What the rule set asks of this home";
    }
    double low = flows.stream().mapToDouble(d -> d).min().orElseThrow();
    double high = flows.stream().mapToDouble(d -> d).max().orElseThrow();
    return "For this home published rules ask between "
        + desk.numbers().plain(low, Unit.AIRFLOW, Rounding.NEAREST)
        + " and "
        + desk.numbers().one(high, Unit.AIRFLOW);
  }

  private static Optional<ChartSpec> chart(Desk desk, List<RuleComparison> rules) {
    Numbers numbers = desk.numbers();
    List<RuleBars.Row> rows = new ArrayList<>();
    var provided = desk.subject().ventilation().provided().wholeHome();
    double most = numbers.onAxis(provided.value().high(), Unit.AIRFLOW);
    for (RuleComparison rule : rules) {
      Optional<Double> value = rule.required().map(f -> numbers.onAxis(f.likely(), f.unit()));
      most = Math.max(most, value.orElse(0.0));
      rows.add(
          new RuleBars.Row(
              RuleNames.of(rule, rules),
              value,
              rule.required().map(numbers::plain).orElse("not told"),
              rule.governing()));
    }
    if (most <= 0) {
      return Optional.empty();
    }
    String title = heading(desk, rules);
    String band = "provided " + numbers.spread(provided.value(), Unit.AIRFLOW, Rounding.DOWN);
    return Optional.of(
        new RuleBars(
            new ChartText(
                title,
                numbers.unit(Unit.AIRFLOW),
                "Documents in the table below",
                title
                    + ". "
                    + Words.list(rows, r -> r.label() + " " + r.valueText())
                    + "; "
                    + band
                    + "."),
            Axis.fromZero(most, 5),
            rows,
            Optional.of(new RuleBars.Band(numbers.onAxis(provided.value(), Unit.AIRFLOW), band))));
  }

  private static Block table(Desk desk, List<RuleComparison> rules) {
    Numbers numbers = desk.numbers();
    String flow = numbers.unit(Unit.AIRFLOW);
    return Grid.wide(
            "",
            List.of(
                Cells.words("rule set"),
                Cells.words("what it is meant for", 56),
                Cells.numbers(flow, 11),
                Cells.numbers("ach", 11),
                Cells.numbers(flow + " per person", 15),
                Cells.numbers(numbers.unit(Unit.AIRFLOW_PER_AREA), 14)),
            rules.stream().map(r -> row(desk, r, rules)).toList(),
            "All but the first are for comparison. From memory: not read again in the document itself.")
        .densely();
  }

  private static Row row(Desk desk, RuleComparison rule, List<RuleComparison> rules) {
    Numbers numbers = desk.numbers();
    return new Row(
        List.of(
            Cells.text(RuleNames.of(rule, rules), RuleNames.document(rule, rules))
                .with(rule.required().map(desk.index()::mark).stream().toList()),
            Cells.text(Words.sentence(rule.purpose())),
            Cells.text(rule.required().map(numbers::plain).orElse(Cells.NOTHING)),
            Cells.text(rule.airChange().map(numbers::plain).orElse(Cells.NOTHING)),
            Cells.text(rule.perPerson().map(numbers::plain).orElse(Cells.NOTHING)),
            Cells.text(rule.perFloorArea().map(numbers::plain).orElse(Cells.NOTHING))),
        rule.governing());
  }

  private static Block quoted(Desk desk) {
    Numbers numbers = desk.numbers();
    return Grid.wide(
        "Air-change figures that people are told, and what each is a figure of",
        List.of(
            Cells.words("ach", 20),
            Cells.words("what it is a figure of"),
            Cells.numbers("here, " + numbers.unit(Unit.AIRFLOW), 16)),
        desk.subject().ventilation().quoted().stream().map(q -> row(numbers, q)).toList(),
        "");
  }

  private static Row row(Numbers numbers, QuotedAirChange quoted) {
    String bounds = numbers.bounds(quoted.airChange(), Unit.AIR_CHANGE);
    return Cells.row(
        Cells.text(bounds.isEmpty() ? numbers.spread(quoted.airChange(), Unit.AIR_CHANGE) : bounds),
        Cells.text(Words.sentence(quoted.meaning()), quoted.source().text()),
        Cells.text(quoted.flow().map(numbers::plain).orElse(Cells.NOTHING)));
  }
}
