package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.ventilation.RuleComparison;
import org.drysill.report.words.Words;

/**
 * What rule sets are called where many stand side by side: by place, and by what tells them apart.
 */
final class RuleNames {
  private static final int MOST = 52;

  private RuleNames() {}

  /** The place, with the variant, or with the document where a place has several. */
  static String of(RuleComparison rule, List<RuleComparison> all) {
    String place = place(rule);
    boolean several =
        all.stream().anyMatch(r -> place(r).equals(place) && !r.title().equals(rule.title()));
    String apart = rule.variant().map(v -> ", " + v).orElse(several ? ", " + rule.title() : "");
    return Words.capital(Words.shortened(place + apart, MOST));
  }

  /** The document, where the line above has another one, and how its figure is known. */
  static String document(RuleComparison rule, List<RuleComparison> all) {
    List<String> parts = new ArrayList<>();
    int at = all.indexOf(rule);
    if (at == 0 || !all.get(at - 1).title().equals(rule.title())) {
      parts.add(rule.title() + ", " + rule.edition());
    }
    if (rule.fromMemory()) {
      parts.add(
          "from memory" + rule.confidence().map(c -> ", " + c.word() + " confidence").orElse(""));
    }
    return String.join("; ", parts);
  }

  private static String place(RuleComparison rule) {
    int comma = rule.place().indexOf(',');
    return comma < 0 ? rule.place() : rule.place().substring(0, comma);
  }
}
