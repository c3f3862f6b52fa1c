package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.recovery.HeatSaved;
import org.drysill.assess.recovery.RecoveryUnit;
import org.drysill.options.FanRunningCost;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Rounding;

/** Heat recovery in use, and what the fans of today take and keep in a year. */
final class RecoverySection implements BriefChapter {
  @Override
  public Optional<Section> write(BriefDesk desk) {
    List<RecoveryUnit> units = desk.subject().recovery().units();
    List<FanRunningCost> costs = desk.subject().options().fansNow();
    if (units.isEmpty() && costs.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    if (!units.isEmpty()) {
      blocks.add(units(desk, units));
    }
    if (!costs.isEmpty()) {
      blocks.add(costs(desk, costs));
    }
    return Optional.of(
        new Section(
            "recovery", desk.say(heading(desk, units)), desk.say("fans.running"), false, blocks));
  }

  private static String heading(BriefDesk desk, List<RecoveryUnit> units) {
    if (units.isEmpty()) {
      return "recovery.heading.none";
    }
    List<Finding> findings = desk.subject().recovery().findings();
    return findings.isEmpty()
        ? "recovery.heading.untested"
        : "recovery.heading." + findings.get(0).verdict().name().toLowerCase(Locale.ROOT);
  }

  private static Grid units(BriefDesk desk, List<RecoveryUnit> units) {
    return Grid.wide(
            "",
            List.of(
                desk.words("recovery.unit", 0),
                desk.numbers("recovery.declared", Unit.PERCENT, 24),
                desk.numbers("recovery.measured", Unit.PERCENT, 28),
                desk.numbers("recovery.effective", Unit.PERCENT, 24),
                desk.numbers("recovery.net", Unit.WATT, 26),
                desk.words("recovery.verdict", 23)),
            units.stream().map(u -> row(desk, u)).toList(),
            desk.say("recovery.foot"))
        .densely();
  }

  private static Row row(BriefDesk desk, RecoveryUnit unit) {
    return Cells.row(
        Cells.text(desk.names().place(unit.id()).orElse(unit.id()), tests(desk, unit)),
        desk.value(unit.declared()),
        unit.measured()
            .map(measured -> desk.value(measured, Rounding.DOWN))
            .orElse(Cells.text(Cells.NOTHING)),
        desk.value(unit.effective()),
        desk.value(
            unit.saved().flatMap(s -> s.net().or(() -> Optional.of(s).map(HeatSaved::heat)))),
        unit.declaredAgainstMeasured()
            .map(f -> Compared.verdict(desk, f.verdict()))
            .orElse(Cells.text(Cells.NOTHING)));
  }

  /** The tests by what they tell. */
  private static String tests(BriefDesk desk, RecoveryUnit unit) {
    if (unit.tests().isEmpty()) {
      return desk.say("recovery.no-test");
    }
    Map<String, Set<String>> forms = new LinkedHashMap<>();
    unit.tests()
        .forEach(
            test ->
                forms
                    .computeIfAbsent(
                        desk.terms().word("tells", test.quality()), told -> new LinkedHashSet<>())
                    .add(desk.terms().word("test", test.form())));
    return forms.entrySet().stream()
        .map(told -> String.join(", ", told.getValue()) + ": " + told.getKey())
        .collect(Collectors.joining("; "));
  }

  private static Grid costs(BriefDesk desk, List<FanRunningCost> costs) {
    return Grid.wide(
            desk.say("fan-cost.title"),
            List.of(
                desk.words("fans.fan", 0),
                desk.numbers("fan-cost.electricity", Unit.KWH_PER_YEAR, 30),
                desk.numbers("fan-cost.heat", Unit.KWH_PER_YEAR, 33),
                desk.numbers("fan-cost.kept", Unit.KWH_PER_YEAR, 33),
                desk.numbers("fan-cost.cost", Unit.MONEY, 30)),
            costs.stream()
                .map(
                    c ->
                        Cells.row(
                            Cells.text(desk.names().place(c.fan()).orElse(c.fan())),
                            desk.value(c.electricity()),
                            desk.value(c.heatLost()),
                            desk.value(c.heatRecovered()),
                            desk.value(c.cost())))
                .toList(),
            "")
        .densely();
  }
}
