package org.drysill.report.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.QuotedAirChange;
import org.drysill.assess.ventilation.RoomRule;
import org.drysill.assess.ventilation.RuleComparison;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;

/** The documents behind the comparison of rule sets, by place and by figure. */
public final class Documents {
  private Documents() {}

  /** Every document once, with the place where it applies or the figure that it prints. */
  public static Block of(Desk desk) {
    Map<String, String> rules = new LinkedHashMap<>();
    for (RuleComparison rule : desk.subject().ventilation().comparisons()) {
      put(rules, rule.title(), rule.edition(), rule.place());
    }
    for (RoomRule rule : desk.subject().ventilation().roomRules()) {
      put(rules, rule.title(), rule.edition(), rule.place());
    }
    Map<String, String> told = new LinkedHashMap<>();
    for (QuotedAirChange quoted : desk.subject().ventilation().quoted()) {
      told.merge(
          quoted.source().text(),
          Told.airChange(desk.numbers(), quoted),
          (a, b) -> a + " and " + b);
    }
    String ach = " " + desk.numbers().unit(Unit.AIR_CHANGE) + ": ";
    return Grid.wide(
            "The rule sets that stand side by side, by the names that they have there",
            List.of(
                Cells.words("documents of the rule sets", 118),
                Cells.words("of the figures that people are told")),
            List.of(
                Cells.row(
                    Cells.text(joined(rules, e -> e.getValue() + ": " + e.getKey())),
                    Cells.text(joined(told, e -> e.getValue() + ach + e.getKey())))),
            "")
        .densely();
  }

  private static void put(Map<String, String> rules, String title, String edition, String place) {
    rules.putIfAbsent(title + ", " + edition, Words.capital(RuleNames.place(place)));
  }

  private static String joined(
      Map<String, String> entries, Function<Map.Entry<String, String>, String> text) {
    return String.join("; ", entries.entrySet().stream().map(text).toList()) + ".";
  }
}
