package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.RangeBars;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Provided against required: the whole home and each wet room. */
final class AirChart {
  private static final int ROWS = 12;

  private AirChart() {}

  static Optional<ChartSpec> of(Desk desk) {
    List<Finding> findings = new ArrayList<>();
    findings.add(desk.subject().ventilation().wholeHome());
    findings.addAll(desk.subject().ventilation().extract());
    List<RangeBars.Row> rows = new ArrayList<>();
    double most = 0;
    for (Finding finding : findings) {
      if (finding.provided().filter(f -> f.unit() == Unit.AIRFLOW).isPresent()
          && rows.size() < ROWS) {
        RangeBars.Row row = row(desk, finding, finding.provided().get());
        most = Math.max(most, Math.max(row.provided().high(), row.required().orElse(0.0)));
        rows.add(row);
      }
    }
    if (rows.isEmpty() || most <= 0) {
      return Optional.empty();
    }
    String title = title(findings);
    return Optional.of(
        new RangeBars(
            new ChartText(
                title,
                desk.numbers().unit(Unit.AIRFLOW),
                "Asked: " + desk.subject().ventilation().rules().named(),
                title + ". " + alt(rows)),
            Axis.fromZero(most, 5),
            rows));
  }

  private static RangeBars.Row row(Desk desk, Finding finding, Figure provided) {
    return new RangeBars.Row(
        Words.capital(Words.shortened(finding.subject(), 44)),
        desk.numbers().onAxis(provided.value(), Unit.AIRFLOW),
        desk.numbers().spread(provided.value(), Unit.AIRFLOW, Rounding.DOWN),
        finding.required().map(f -> desk.numbers().onAxis(f.likely(), Unit.AIRFLOW)),
        finding
            .required()
            .map(f -> desk.numbers().plain(f.likely(), Unit.AIRFLOW, Rounding.UP) + "\u00a0asked")
            .orElse(""),
        Optional.of(finding.verdict()));
  }

  private static String title(List<Finding> findings) {
    long falling = findings.stream().filter(f -> f.verdict() == Verdict.SHORT).count();
    long open = findings.stream().filter(f -> f.verdict() == Verdict.UNKNOWN).count();
    if (falling > 0) {
      return Words.capital(Words.number((int) falling))
          + " of "
          + Words.count(findings.size(), "flow", "flows")
          + (falling == 1 ? " stays" : " stay")
          + " below what is asked";
    }
    return open > 0
        ? "No flow is shown to be short, but not all can be told"
        : "Every flow reaches what is asked";
  }

  private static String alt(List<RangeBars.Row> rows) {
    return Words.list(
        rows,
        r ->
            r.label()
                + " "
                + r.valueText()
                + (r.requiredText().isEmpty() ? "" : ", " + r.requiredText()));
  }
}
