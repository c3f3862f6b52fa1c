package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.MoneyFacts;
import org.drysill.assess.Unit;
import org.drysill.options.CostParts;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.CostStack;
import org.drysill.report.chart.CostStack.Pattern;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** What the best packages cost over the horizon, and what that is made of. */
final class CostPartsChart {
  private static final int INTERVALS = 5;

  private final Numbers numbers;
  private final MoneyFacts money;

  private CostPartsChart(Desk desk) {
    this.numbers = desk.numbers();
    this.money = desk.subject().home().money();
  }

  /** Empty where a price of the best package is not known. */
  static Optional<ChartSpec> of(Desk desk, PackagesResult packages) {
    return packages
        .best()
        .get(0)
        .costParts()
        .map(p -> new CostPartsChart(desk).chart(packages.best(), p));
  }

  /** A part with its words. */
  private record Named(String name, double value, Pattern pattern) {}

  private static List<Named> named(CostParts parts) {
    return List.of(
        new Named("first cost", parts.firstCost(), Pattern.DATA),
        new Named("replacements", parts.replacements(), Pattern.RISING),
        new Named("upkeep", parts.upkeep(), Pattern.GROUND),
        new Named("electricity", parts.electricity(), Pattern.INK),
        new Named("heat", parts.heat(), Pattern.FALLING),
        new Named("value left", parts.residualValue(), Pattern.OPEN));
  }

  private ChartSpec chart(List<MeasurePackage> best, CostParts first) {
    List<CostStack.Bar> bars =
        best.stream().flatMap(p -> p.costParts().map(c -> bar(p.name(), c)).stream()).toList();
    String title =
        "Over "
            + years()
            + " package "
            + best.get(0).name()
            + " costs "
            + numbers.one(first.total(), Unit.MONEY)
            + " in money of today; "
            + greatest(first);
    return new CostStack(
        new ChartText(
            title,
            numbers.unit(Unit.MONEY) + " of today over " + years(),
            "Global cost, EN 15459-1, at "
                + numbers.worked(money.discountRate().value(), Unit.PERCENT)
                + " interest above inflation: first cost, what is bought again, and what runs, less"
                + " the value left at the end",
            title + ". " + Words.list(bars, CostPartsChart::said) + "."),
        axis(bars),
        bars);
  }

  private String years() {
    long years = Math.round(money.horizon().likely());
    return years + (years == 1 ? " year" : " years");
  }

  private static String greatest(CostParts parts) {
    return named(parts).stream()
            .max(Comparator.comparingDouble(Named::value))
            .map(n -> n.name() + (n.name().equals("replacements") ? " are" : " is"))
            .orElseThrow()
        + " the greatest part of it";
  }

  private CostStack.Bar bar(String name, CostParts parts) {
    List<CostStack.Part> shown = new ArrayList<>();
    for (Named part : named(parts)) {
      if (Math.round(part.value()) != 0) {
        shown.add(
            new CostStack.Part(
                part.name() + " " + count(part.value()), part.value(), part.pattern()));
      }
    }
    return new CostStack.Bar(name, count(parts.total()), shown);
  }

  private String count(double value) {
    return numbers.plain(value, Unit.MONEY, Rounding.NEAREST);
  }

  private static Axis axis(List<CostStack.Bar> bars) {
    double low = 0;
    double high = 1;
    for (CostStack.Bar bar : bars) {
      double left = 0;
      double right = 0;
      for (CostStack.Part part : bar.parts()) {
        left += Math.min(0, part.value());
        right += Math.max(0, part.value());
      }
      low = Math.min(low, left);
      high = Math.max(high, right);
    }
    return Axis.around(low, high, INTERVALS);
  }

  private static String said(CostStack.Bar bar) {
    return "Package "
        + bar.label()
        + ": "
        + bar.total()
        + " ("
        + Words.list(bar.parts().stream().map(CostStack.Part::label).toList())
        + ")";
  }
}
