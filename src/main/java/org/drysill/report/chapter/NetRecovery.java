package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.options.FanRunningCost;
import org.drysill.options.OptionsResult;
import org.drysill.options.Payback;
import org.drysill.options.RankedMeasure;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Grid;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** What heat recovery is worth after its fan is paid, and whether such a unit pays for itself. */
final class NetRecovery {
  private NetRecovery() {}

  /** A table of the units that are there, and the paybacks of such units bought anew. */
  static List<Block> of(Desk desk, List<FanRunningCost> costs) {
    List<Block> worth = RecoveryWorthBlocks.of(desk, costs);
    List<FanRunningCost> units = costs.stream().filter(c -> c.netKept().isPresent()).toList();
    if (units.isEmpty()) {
      return worth;
    }
    List<Block> blocks = new ArrayList<>(List.of(table(desk, units)));
    blocks.addAll(worth);
    List<String> paybacks = paybacks(desk.subject().options(), units);
    if (!paybacks.isEmpty()) {
      blocks.add(new Bullets(List.of(), paybacks));
    }
    return blocks;
  }

  private static Grid table(Desk desk, List<FanRunningCost> units) {
    Numbers numbers = desk.numbers();
    return new Grid(
        desk.notes(
            units.stream().limit(2).flatMap(u -> Stream.of(u.netKept(), u.netSaved())).toList()),
        "What heat recovery leaves in a year when its fan is paid",
        List.of(
            Cells.words("unit"),
            Cells.numbers("recovered, kWh", 20),
            Cells.numbers("electricity, kWh", 18),
            Cells.numbers("left, kWh", 20),
            Cells.numbers("left, " + numbers.unit(Unit.MONEY), 20)),
        units.stream()
            .map(
                u ->
                    Cells.row(
                        Cells.text(name(desk, u)),
                        Cells.value(numbers, u.heatRecovered()),
                        Cells.value(numbers, u.electricity()),
                        Cells.value(numbers, u.netKept()),
                        Cells.value(numbers, u.netSaved())))
            .toList(),
        "against the same air without recovery, moved by no electricity");
  }

  private static List<String> paybacks(OptionsResult options, List<FanRunningCost> units) {
    return units.stream()
        .flatMap(u -> u.likeMeasure().stream())
        .distinct()
        .flatMap(
            id ->
                Stream.concat(options.ranked().stream(), options.beyondBudget().stream())
                    .filter(m -> m.measure().equals(id))
                    .limit(1))
        .map(NetRecovery::payback)
        .toList();
  }

  private static String payback(RankedMeasure measure) {
    return Stream.of(
            Optional.of(measure.money().againstNothing()), measure.money().againstSameAir())
        .flatMap(Optional::stream)
        .map(Payback::words)
        .map(Words::sentence)
        .collect(Collectors.joining(" ", measure.title() + ", bought today. ", ""));
  }

  static String name(Desk desk, FanRunningCost cost) {
    return Words.capital(
        desk.subject().ventilation().fan(cost.fan()).map(f -> f.name()).orElse(cost.fan()));
  }
}
