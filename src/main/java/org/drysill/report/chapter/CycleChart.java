package org.drysill.report.chapter;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.assess.recovery.cycle.CyclesSeen;
import org.drysill.report.block.ChartBlock;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.CycleCurve;
import org.drysill.report.chart.Tick;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;

/** The cycle of a unit as its log shows it. */
final class CycleChart {
  private CycleChart() {}

  /** The chart of the first log of a unit that shows its cycle. */
  static Optional<ChartBlock> of(Desk desk, RecoveryUnit unit) {
    return unit.tests().stream()
        .flatMap(test -> test.cycles().stream())
        .findFirst()
        .map(seen -> ChartBlocks.of("cycle-" + unit.id(), chart(desk.numbers(), unit, seen)));
  }

  private static CycleCurve chart(Numbers numbers, RecoveryUnit unit, CyclesSeen seen) {
    double supply = seen.supplyTime().likely();
    double cycle = supply + seen.otherTime().likely();
    String title =
        "Within one supply phase a reading falls from %s to %s: only its mean tells"
            .formatted(numbers.likely(seen.early()), numbers.likely(seen.late()));
    return new CycleCurve(
        new ChartText(
            title,
            "temperature at the grille of the "
                + unit.name()
                + ", "
                + numbers.unit(Unit.CELSIUS)
                + ", by seconds since supply began",
            "Mean of %d whole cycles of its log".formatted(seen.used()),
            title
                + ". Room "
                + numbers.likely(seen.room())
                + ", outdoors "
                + numbers.likely(seen.outdoors())
                + ", mean of the air supplied "
                + numbers.likely(seen.supply())
                + "."),
        time(cycle),
        temperature(numbers, seen),
        List.of(
            new CycleCurve.Half(0, supply, "blows in"),
            new CycleCurve.Half(supply, cycle, "draws out")),
        seen.course().stream()
            .map(
                point ->
                    new CycleCurve.At(
                        Math.min(cycle, point.seconds()),
                        numbers.onAxis(point.celsius(), Unit.CELSIUS)))
            .toList(),
        List.of(level(numbers, "room", seen.room()), level(numbers, "outdoors", seen.outdoors())),
        level(numbers, "mean supplied", seen.supply()));
  }

  private static Axis time(double cycle) {
    List<Tick> ticks =
        Axis.fromZero(cycle, 7).ticks().stream().filter(tick -> tick.at() <= cycle).toList();
    return new Axis(0, cycle, ticks);
  }

  private static Axis temperature(Numbers numbers, CyclesSeen seen) {
    double[] all =
        Stream.concat(
                seen.course().stream().map(CyclesSeen.CoursePoint::celsius),
                Stream.of(seen.room().likely(), seen.outdoors().likely()))
            .mapToDouble(celsius -> numbers.onAxis(celsius, Unit.CELSIUS))
            .sorted()
            .toArray();
    return Axis.around(all[0], all[all.length - 1], 4);
  }

  private static CycleCurve.Level level(Numbers numbers, String words, Figure figure) {
    return new CycleCurve.Level(
        numbers.onAxis(figure.likely(), Unit.CELSIUS), words + " " + numbers.plain(figure));
  }
}
