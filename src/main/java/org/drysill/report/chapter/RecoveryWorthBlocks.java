package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.options.FanRunningCost;
import org.drysill.options.RecoveryWorth;
import org.drysill.physics.Range;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** Each heat-recovery unit beside the cheapest measure that moves the same air. */
final class RecoveryWorthBlocks {
  private RecoveryWorthBlocks() {}

  static List<Block> of(Desk desk, List<FanRunningCost> costs) {
    List<Block> blocks = new ArrayList<>();
    for (FanRunningCost cost : costs) {
      cost.worth()
          .ifPresent(
              w -> {
                blocks.add(table(desk, cost, w));
                blocks.add(words(desk, w));
              });
    }
    return blocks;
  }

  private static Grid table(Desk desk, FanRunningCost cost, RecoveryWorth worth) {
    Numbers numbers = desk.numbers();
    return Grid.wide(
        "The same air in a year: " + NetRecovery.name(desk, cost) + ", and by " + worth.otherName(),
        List.of(
            Cells.words(""),
            Cells.numbers(worth.measured() ? "unit, as measured" : "unit, as declared", 44),
            Cells.numbers("without recovery", 44)),
        List.of(
            row(desk, "Heat kept in use, kWh", worth.heatKept()),
            row(desk, "Heat lost, kWh", worth.heatLost(), worth.otherHeatLost()),
            row(desk, "Electricity of fans, kWh", worth.electricity(), worth.otherElectricity()),
            row(
                desk,
                "First cost of one bought today, " + numbers.unit(Unit.MONEY),
                worth.first(),
                worth.otherFirst()),
            row(
                desk,
                "All in all a year, " + numbers.unit(Unit.MONEY),
                worth.annual(),
                worth.otherAnnual())),
        (worth.measured()
                ? "Recovery as measured in this home. "
                : "No usable test: recovery as declared, taken down for use. ")
            + "All in all: heat, electricity and upkeep, with first cost and replacement as equal"
            + " yearly payments.");
  }

  private static Row row(Desk desk, String label, Figure unit) {
    return Cells.row(
        Cells.text(label).with(List.of(desk.index().mark(unit))),
        Cells.value(desk.numbers(), unit),
        Cells.text(Cells.NOTHING));
  }

  private static Row row(Desk desk, String label, Figure unit, Figure other) {
    return Cells.row(
        Cells.text(label).with(List.of(desk.index().mark(unit), desk.index().mark(other))),
        Cells.value(desk.numbers(), unit),
        Cells.value(desk.numbers(), other));
  }

  private static Prose words(Desk desk, RecoveryWorth worth) {
    return new Prose(
        desk.notes(
            List.of(
                Optional.of(worth.savesYearly()),
                Optional.of(worth.leftYearly()),
                Optional.of(worth.leftOverHorizon()))),
        "",
        verdict(worth.leftYearly().value()),
        said(desk.numbers(), worth));
  }

  /** Sure only where all that is not known says the same. */
  private static String verdict(Range left) {
    String likely =
        left.likely() < 0
            ? "The recovery likely does not pay for the unit"
            : "The recovery likely pays for the unit";
    return left.low() < 0 && left.high() >= 0
        ? likely + ", but that is not sure."
        : likely.replace("likely ", "") + ".";
  }

  private static String said(Numbers numbers, RecoveryWorth worth) {
    return "In running it saves "
        + numbers.full(worth.savesYearly())
        + " against that; when both are paid for, "
        + numbers.full(worth.leftYearly())
        + " is left, "
        + numbers.full(worth.leftOverHorizon())
        + " over the horizon; less than nothing is a loss. "
        + Words.sentence(worth.payback().words())
        + (worth.here()
            ? ""
            : " The other measure would draw the same air through the home, not through this room.");
  }
}
