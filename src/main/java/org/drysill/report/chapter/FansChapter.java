package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.recovery.RecoveryTest;
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.assess.recovery.TestForm;
import org.drysill.options.FanRunningCost;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.table.FindingTable;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** Fans: what they cost to run, and heat recovery tests. */
final class FansChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<RecoveryUnit> units = desk.subject().recovery().units();
    List<FanRunningCost> costs = desk.subject().options().fansNow();
    if (units.isEmpty() && costs.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    List<Finding> findings = desk.subject().recovery().findings();
    if (!findings.isEmpty()) {
      blocks.add(FindingTable.of(desk, "Heat recovery, measured against declared", findings));
    }
    units.forEach(u -> unit(desk, blocks, u));
    if (!costs.isEmpty()) {
      blocks.add(costs(desk, costs));
      blocks.addAll(NetRecovery.of(desk, costs));
    }
    return Optional.of(
        new Section("fans", heading(findings, units), "Fans and heat recovery", false, blocks));
  }

  private static String heading(List<Finding> findings, List<RecoveryUnit> units) {
    if (units.isEmpty()) {
      return "What the fans of today cost to run";
    }
    if (findings.isEmpty()) {
      return "What the heat recovery gives was not shown by a test";
    }
    Verdict verdict = findings.get(0).verdict();
    return switch (verdict) {
      case MEETS -> "The heat recovery reaches what is declared";
      case SHORT -> "The heat recovery is below what is declared";
      case UNKNOWN -> "Whether the heat recovery reaches what is declared cannot be told";
    };
  }

  private static void unit(Desk desk, List<Block> blocks, RecoveryUnit unit) {
    blocks.add(new Subhead(List.of(), Words.capital(unit.name()) + ", " + unit.roomName()));
    blocks.add(
        new Prose(
            desk.notes(List.of(unit.measured(), unit.effective(), unit.saved().map(s -> s.heat()))),
            "",
            "",
            Words.sentence(unit.verdict())));
    if (!unit.tests().isEmpty()) {
      blocks.add(tests(desk.numbers(), unit));
    }
    CycleChart.of(desk, unit).ifPresent(blocks::add);
    List<String> more = new ArrayList<>();
    unit.tests().forEach(t -> more.add(Words.sentence(t.why())));
    unit.tests().forEach(t -> t.warnings().forEach(w -> more.add(Words.sentence(w))));
    unit.notes().forEach(n -> more.add(Words.sentence(n)));
    unit.saved()
        .ifPresent(
            s ->
                more.add(
                    "At the temperatures of the test it keeps "
                        + desk.numbers().full(s.heat())
                        + " of heat in the home"
                        + s.net()
                            .map(n -> ", " + desk.numbers().likely(n) + " net of its fan")
                            .orElse("")
                        + "."));
    unit.sleeve().ifPresent(s -> more.add(Words.sentence(s.words())));
    if (!more.isEmpty()) {
      blocks.add(new Bullets(List.of(), more.stream().distinct().toList()));
    }
  }

  private static Grid tests(Numbers numbers, RecoveryUnit unit) {
    return new Grid(
        List.of(),
        "",
        List.of(
            Cells.words("test"),
            Cells.numbers("inside less outside, " + numbers.unit(Unit.KELVIN), 22),
            Cells.numbers("recovered, supply side, %", 21),
            Cells.numbers("exhaust side, %", 20),
            Cells.words("tells", 18)),
        unit.tests().stream().map(t -> row(numbers, t)).toList(),
        "The two sides are never mixed: the supply side is what the room gets.");
  }

  private static Row row(Numbers numbers, RecoveryTest test) {
    String tells =
        switch (test.quality()) {
          case NORMAL -> test.form() == TestForm.SINGLE_READING ? "its moment" : "much";
          case INDICATIVE -> "a little";
          case REFUSED -> "nothing";
        };
    return Cells.row(
        Cells.text(test.at().map(Words::moment).orElse("no time given") + form(test)),
        Cells.value(numbers, test.difference()),
        Cells.value(numbers, test.supplyRatio()),
        Cells.value(numbers, test.exhaustRatio()),
        Cells.text(tells));
  }

  private static String form(RecoveryTest test) {
    return switch (test.form()) {
      case SINGLE_READING -> ", single reading";
      case MEANS -> "";
      case LOG -> ", log";
    };
  }

  private static Grid costs(Desk desk, List<FanRunningCost> costs) {
    Numbers numbers = desk.numbers();
    return new Grid(
        desk.notes(costs.stream().map(FanRunningCost::cost).limit(3).toList()),
        "What each fan costs to run in a year",
        List.of(
            Cells.words("fan"),
            Cells.numbers("electricity, kWh", 18),
            Cells.numbers("heat in its air, kWh", 25),
            Cells.numbers("recovered, kWh", 25),
            Cells.numbers("cost, " + numbers.unit(Unit.MONEY), 18)),
        costs.stream()
            .map(
                c ->
                    Cells.row(
                        Cells.text(name(desk, c)),
                        Cells.value(numbers, c.electricity()),
                        Cells.value(numbers, c.heatLost()),
                        Cells.value(numbers, c.heatRecovered()),
                        Cells.value(numbers, c.cost())))
            .toList(),
        "");
  }

  private static String name(Desk desk, FanRunningCost cost) {
    return Words.capital(
        desk.subject().ventilation().fan(cost.fan()).map(f -> f.name()).orElse(cost.fan()));
  }
}
