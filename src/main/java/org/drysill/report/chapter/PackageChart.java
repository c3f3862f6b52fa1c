package org.drysill.report.chapter;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Unit;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.drysill.options.PackagesResult.FrontPoint;
import org.drysill.physics.Range;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.CostEffect;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Packages that none beats, by what they cost a year and what they leave. */
final class PackageChart {
  /** Names stand at the right of their points, the dearest one's too. */
  private static final double ROOM_FOR_NAMES = 1.3;

  /** Fewer points make no curve. */
  private static final int LEAST = 5;

  private PackageChart() {}

  static Optional<ChartSpec> of(Desk desk, PackagesResult packages) {
    List<CostEffect.Point> points =
        packages.front().stream().map(p -> point(desk.numbers(), packages, p)).toList();
    if (points.size() < LEAST) {
      return Optional.empty();
    }
    String left =
        isMould(packages)
            ? "months at risk of mould left in a year"
            : "air lacking, " + desk.numbers().unit(Unit.AIRFLOW);
    String cost = desk.numbers().unit(Unit.MONEY_PER_YEAR) + ", all in all";
    String title = title(desk.numbers(), packages);
    return Optional.of(
        new CostEffect(
            new ChartText(
                title,
                left + " against " + cost,
                "Open: packages that none beats in cost and effect at once, from the home as it is"
                    + " on; filled: the best packages",
                title + ". " + alt(desk.numbers(), packages, left)),
            axis(points.stream().map(CostEffect.Point::cost).toList(), ROOM_FOR_NAMES),
            cost,
            axis(points.stream().map(CostEffect.Point::effect).toList(), 1),
            left,
            points));
  }

  private static boolean isMould(PackagesResult packages) {
    return packages.today().mouldMonths() > 0;
  }

  private static CostEffect.Point point(
      Numbers numbers, PackagesResult packages, FrontPoint point) {
    double left =
        isMould(packages) ? point.mouldMonths() : numbers.onAxis(point.lacksM3S(), Unit.AIRFLOW);
    return new CostEffect.Point(
        point.name(),
        packages.best().stream()
            .filter(p -> p.name().equals(point.name()))
            .findFirst()
            .map(p -> Words.count(p.steps().size(), "measure", "measures"))
            .orElse(""),
        Range.exactly(point.annualCost()),
        Range.exactly(left),
        !point.name().isEmpty());
  }

  private static Axis axis(List<Range> ranges, double room) {
    double low = ranges.stream().mapToDouble(Range::low).min().orElse(0);
    double high = ranges.stream().mapToDouble(Range::high).max().orElse(1) * room;
    return Axis.around(Math.min(0, low), Math.max(high, Math.min(0, low) + 1), 5);
  }

  static String title(Numbers numbers, PackagesResult packages) {
    Optional<MeasurePackage> best = packages.best().stream().findFirst();
    return best.map(
            b ->
                "Package A closes "
                    + (b.reaches() ? "all" : b.closedPercent() + " %")
                    + " of what is lacking for "
                    + numbers.likely(b.annualCost()))
        .orElse("What packages cost and leave");
  }

  private static String alt(Numbers numbers, PackagesResult packages, String left) {
    List<FrontPoint> front = packages.front();
    FrontPoint last = front.get(front.size() - 1);
    return "From nothing to "
        + Math.round(last.annualCost())
        + " "
        + numbers.unit(Unit.MONEY_PER_YEAR)
        + "; "
        + left
        + ": from "
        + amount(numbers, packages, front.get(0))
        + " down to "
        + amount(numbers, packages, last)
        + ".";
  }

  private static String amount(Numbers numbers, PackagesResult packages, FrontPoint point) {
    return isMould(packages)
        ? Integer.toString(point.mouldMonths())
        : numbers.plain(point.lacksM3S(), Unit.AIRFLOW, Rounding.NEAREST);
  }
}
