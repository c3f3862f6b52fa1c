package org.drysill.report.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.QuotedAirChange;
import org.drysill.assess.ventilation.RoomRule;
import org.drysill.assess.ventilation.RuleComparison;
import org.drysill.report.block.Entry;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** The documents behind the comparison of rule sets, by place and by figure. */
public final class Documents {
  private Documents() {}

  /**
   * Every document once, with the place where it applies or the figure that it prints, under words
   * that say which.
   */
  public static List<Entry> of(Desk desk) {
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
    List<Entry> entries = new ArrayList<>();
    add(entries, "Documents of the rule sets, by the names that they have side by side", rules, "");
    add(entries, "Documents of the figures that people are told", told, ach);
    return entries;
  }

  private static void add(
      List<Entry> entries, String title, Map<String, String> documents, String unit) {
    if (!documents.isEmpty()) {
      entries.add(new Entry("", title, ""));
      documents.forEach((document, what) -> entries.add(new Entry(what + unit, document, "")));
    }
  }

  private static void put(Map<String, String> rules, String title, String edition, String place) {
    rules.putIfAbsent(title + ", " + edition, Words.capital(RuleNames.place(place)));
  }
}
