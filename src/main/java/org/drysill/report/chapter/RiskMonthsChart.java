package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.options.MeasurePackage;
import org.drysill.options.MonthsAtRisk;
import org.drysill.options.PackagesResult;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.MonthLines;
import org.drysill.report.chart.MonthPairs;
import org.drysill.report.words.Words;

/** Places at risk in each month, in the home that packages are held against and with the best. */
final class RiskMonthsChart {
  private static final int MONTHS = 12;
  private static final int JULY = 6;

  private RiskMonthsChart() {}

  static Optional<ChartSpec> of(PackagesResult packages, String baseline) {
    MonthsAtRisk today = packages.today().atRisk();
    List<MonthPairs.Panel> panels = new ArrayList<>();
    MeasurePackage best = packages.best().get(0);
    panel("Walls, corners and reveals at risk of mould", today.mould(), best.atRisk().mould())
        .ifPresent(panels::add);
    panel(
            "Windows with wet glass on a cold night of the month",
            today.wetGlass(),
            best.atRisk().wetGlass())
        .ifPresent(panels::add);
    if (panels.isEmpty()) {
      return Optional.empty();
    }
    String title = title(packages.today(), best);
    String with = "with package " + best.name();
    return Optional.of(
        new MonthPairs(
            new ChartText(
                title,
                "number of places in each month",
                "likely values; the worst part of a window or corner stands for it",
                title + ". " + alt(panels)),
            baseline,
            with,
            MonthLines.JULY_FIRST,
            panels));
  }

  /** Empty where nothing is at risk before or after. */
  private static Optional<MonthPairs.Panel> panel(
      String label, List<Integer> before, List<Integer> after) {
    return IntStream.concat(before.stream().mapToInt(i -> i), after.stream().mapToInt(i -> i))
            .allMatch(i -> i == 0)
        ? Optional.empty()
        : Optional.of(new MonthPairs.Panel(label, fromJuly(before), fromJuly(after)));
  }

  /** From July on, so that the winter stays whole. */
  private static List<Integer> fromJuly(List<Integer> months) {
    return IntStream.range(0, MONTHS).map(m -> months.get((m + JULY) % MONTHS)).boxed().toList();
  }

  private static String title(MeasurePackage today, MeasurePackage best) {
    String glass =
        "of "
            + Words.count(today.wetGlassMonths(), "month", "months")
            + " with wet glass it leaves "
            + Words.number(best.wetGlassMonths());
    String name = "Package " + best.name();
    if (today.mouldMonths() == 0) {
      return name + ": " + glass;
    }
    String mould =
        best.mouldMonths() == 0
            ? " ends every month at risk of mould"
            : " leaves "
                + Words.number(best.mouldMonths())
                + " of "
                + Words.count(today.mouldMonths(), "month", "months")
                + " at risk of mould";
    return name + mould + (today.wetGlassMonths() == 0 ? "" : "; " + glass);
  }

  private static String alt(List<MonthPairs.Panel> panels) {
    return Words.list(
            panels,
            p ->
                p.label()
                    + " from July to June, before and after: "
                    + Words.list(
                        IntStream.range(0, MONTHS)
                            .mapToObj(m -> p.before().get(m) + " and " + p.after().get(m))
                            .toList()))
        + ".";
  }
}
