package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.drysill.report.block.ChartBlock;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.MonthLines;
import org.drysill.report.chart.MonthPairs;
import org.drysill.report.chart.RangeBars;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** The charts of the short report: those of the long one, in the words of a language. */
final class BriefCharts {
  private static final int ROWS = 8;
  private static final int LABEL = 44;
  private static final int MONTHS = 12;
  private static final int JULY = 6;

  /** Lower than usual, so that both charts stand on the first page [mm]. */
  private static final double FLAT = 26;

  private final BriefDesk desk;

  BriefCharts(BriefDesk desk) {
    this.desk = desk;
  }

  /** Provided against required: the whole home and wet rooms. */
  Optional<ChartBlock> air() {
    List<Finding> findings = new ArrayList<>(List.of(desk.subject().ventilation().wholeHome()));
    findings.addAll(desk.subject().ventilation().extract());
    List<RangeBars.Row> rows =
        findings.stream()
            .filter(f -> f.provided().filter(p -> p.unit() == Unit.AIRFLOW).isPresent())
            .limit(ROWS)
            .map(this::row)
            .toList();
    double most =
        rows.stream()
            .mapToDouble(r -> Math.max(r.provided().high(), r.required().orElse(0.0)))
            .max()
            .orElse(0);
    if (most <= 0) {
      return Optional.empty();
    }
    String title = desk.say("chart.air.title");
    Map<Verdict, String> words =
        Arrays.stream(Verdict.values())
            .collect(Collectors.toMap(v -> v, v -> Compared.word(desk, v)));
    return Optional.of(
        block(
            "air",
            new RangeBars(
                new ChartText(
                    title,
                    desk.numbers().unit(Unit.AIRFLOW),
                    desk.say("chart.air.source", desk.subject().ventilation().rules().named()),
                    title
                        + ". "
                        + rows.stream()
                            .map(r -> r.label() + ": " + r.valueText() + "; " + r.requiredText())
                            .collect(Collectors.joining(". "))
                        + "."),
                desk.numbers().marked(Axis.fromZero(most, 5)),
                rows,
                words)));
  }

  private RangeBars.Row row(Finding finding) {
    var provided = finding.provided().orElseThrow();
    String bounds = desk.numbers().bounds(provided.value(), Unit.AIRFLOW);
    String likely = desk.numbers().plain(provided.likely(), Unit.AIRFLOW, Rounding.DOWN);
    return new RangeBars.Row(
        Words.shortened(desk.terms().finding(finding), LABEL),
        desk.numbers().onAxis(provided.value(), Unit.AIRFLOW),
        bounds.isEmpty() ? likely : likely + "\u00a0(" + bounds + ")",
        finding.required().map(f -> desk.numbers().onAxis(f.likely(), Unit.AIRFLOW)),
        finding
            .required()
            .map(
                f ->
                    desk.say(
                        "chart.air.asked",
                        desk.numbers().plain(f.likely(), Unit.AIRFLOW, Rounding.UP)))
            .orElse(""),
        Optional.of(finding.verdict()));
  }

  /** Places at risk in each month, today and with the best package. */
  Optional<ChartBlock> months(PackagesResult packages) {
    if (packages.best().isEmpty()) {
      return Optional.empty();
    }
    MeasurePackage best = packages.best().get(0);
    List<MonthPairs.Panel> panels = new ArrayList<>();
    panel("chart.months.mould", packages.today().atRisk().mould(), best.atRisk().mould())
        .ifPresent(panels::add);
    panel("chart.months.glass", packages.today().atRisk().wetGlass(), best.atRisk().wetGlass())
        .ifPresent(panels::add);
    if (panels.isEmpty()) {
      return Optional.empty();
    }
    String title = desk.say("chart.months.title", best.name());
    return Optional.of(
        block(
            "months",
            new MonthPairs(
                new ChartText(
                    title,
                    desk.say("chart.months.unit"),
                    desk.say("chart.months.source"),
                    title + ". " + panels.stream().map(this::alt).collect(Collectors.joining(" "))),
                desk.say("chart.months.before"),
                desk.say("chart.months.after", best.name()),
                MonthLines.JULY_FIRST,
                panels),
            FLAT * panels.size()));
  }

  private Optional<MonthPairs.Panel> panel(String key, List<Integer> before, List<Integer> after) {
    boolean nothing =
        IntStream.range(0, MONTHS).allMatch(m -> before.get(m) == 0 && after.get(m) == 0);
    return nothing
        ? Optional.empty()
        : Optional.of(new MonthPairs.Panel(desk.say(key), fromJuly(before), fromJuly(after)));
  }

  /** From July on, so that the winter stays whole. */
  private static List<Integer> fromJuly(List<Integer> months) {
    return IntStream.range(0, MONTHS).mapToObj(m -> months.get((m + JULY) % MONTHS)).toList();
  }

  private String alt(MonthPairs.Panel panel) {
    return desk.say(
        "chart.months.alt",
        panel.label(),
        panel.before().stream().map(String::valueOf).collect(Collectors.joining(", ")),
        panel.after().stream().map(String::valueOf).collect(Collectors.joining(", ")));
  }

  static ChartBlock block(String id, ChartSpec spec) {
    return block(id, spec, spec.heightMm());
  }

  private static ChartBlock block(String id, ChartSpec spec, double heightMm) {
    return new ChartBlock(
        List.of(), "chart-" + id, spec, Long.toString(Math.round(heightMm)), false);
  }
}
