package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Unit;
import org.drysill.options.RankedMeasure;
import org.drysill.physics.Range;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.CostEffect;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** Measures by what they cost a year and by how much drier they make the air. */
final class CostChart {
  private static final int POINTS = 10;
  private static final int CHOSEN = 3;

  private CostChart() {}

  static Optional<ChartSpec> of(Desk desk) {
    List<CostEffect.Point> points = new ArrayList<>();
    for (RankedMeasure measure : desk.subject().options().ranked()) {
      if (points.size() < POINTS) {
        point(desk.numbers(), measure).ifPresent(points::add);
      }
    }
    if (points.size() < 2) {
      return Optional.empty();
    }
    String effect = "less moisture in the air, %";
    String cost = desk.numbers().unit(Unit.MONEY_PER_YEAR) + ", all in all";
    String title = title(points);
    return Optional.of(
        new CostEffect(
            new ChartText(
                title,
                effect + " against " + cost,
                "Numbers: the rank in the table below; filled: the first three",
                title + ". " + alt(desk.numbers(), points)),
            axis(points.stream().map(CostEffect.Point::cost).toList()),
            cost,
            axis(points.stream().map(CostEffect.Point::effect).toList()),
            effect,
            points));
  }

  private static Optional<CostEffect.Point> point(Numbers numbers, RankedMeasure measure) {
    Optional<Range> effect =
        measure.effect().excessChange().map(f -> numbers.onAxis(f.value().times(-1), f.unit()));
    Optional<Range> cost =
        measure.money().annualCost().map(f -> numbers.onAxis(f.value(), f.unit()));
    if (effect.isEmpty() || cost.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new CostEffect.Point(
            Integer.toString(measure.rank()),
            Words.shortened(measure.title(), 64),
            cost.get(),
            effect.get(),
            measure.rank() <= CHOSEN));
  }

  private static Axis axis(List<Range> ranges) {
    double low = ranges.stream().mapToDouble(Range::low).min().orElse(0);
    double high = ranges.stream().mapToDouble(Range::high).max().orElse(1);
    return Axis.around(Math.min(0, low), Math.max(high, Math.min(0, low) + 1), 5);
  }

  private static String title(List<CostEffect.Point> points) {
    CostEffect.Point most =
        points.stream()
            .max(Comparator.comparingDouble((CostEffect.Point p) -> p.effect().likely()))
            .orElseThrow();
    return most.label() + ": the greatest effect on the moisture of the air";
  }

  private static String alt(Numbers numbers, List<CostEffect.Point> points) {
    return Words.list(
            points,
            p ->
                p.number()
                    + " "
                    + p.label()
                    + ": "
                    + Math.round(p.effect().likely())
                    + " % less for "
                    + Math.round(p.cost().likely())
                    + " "
                    + numbers.unit(Unit.MONEY_PER_YEAR))
        + ".";
  }
}
