package org.drysill.report.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.QuotedAirChange;
import org.drysill.assess.ventilation.RoomRule;
import org.drysill.assess.ventilation.RuleComparison;
import org.drysill.report.block.Block;
import org.drysill.report.block.Entries;
import org.drysill.report.block.Entry;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** The documents behind the comparison of rule sets, by place and by figure. */
public final class Documents {
  private Documents() {}

  /** Every document once, with the place where it applies or the figure that it prints. */
  public static List<Block> of(Desk desk) {
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
    String ach = " " + desk.numbers().unit(Unit.AIR_CHANGE);
    List<Block> blocks = new ArrayList<>();
    add(blocks, "Documents of the rule sets, by the names that they have side by side", rules, "");
    add(blocks, "Documents of the figures that people are told", told, ach);
    return blocks;
  }

  private static void add(
      List<Block> blocks, String title, Map<String, String> documents, String unit) {
    if (!documents.isEmpty()) {
      List<Entry> items =
          documents.entrySet().stream()
              .map(e -> new Entry(e.getValue() + unit, e.getKey(), ""))
              .toList();
      blocks.add(new Entries(title, items, ""));
    }
  }

  private static void put(Map<String, String> rules, String title, String edition, String place) {
    rules.putIfAbsent(title + ", " + edition, Words.capital(RuleNames.place(place)));
  }
}
