package org.drysill.report.rules;

import java.util.List;
import org.drysill.assess.ventilation.RuleComparison;
import org.drysill.reference.rules.Confidence;
import org.drysill.report.words.Words;

/**
 * What rule sets are called where many stand side by side: by place, and by what tells them apart.
 */
final class RuleNames {
  private static final int MOST = 52;

  /** Marks a figure that was remembered and not read again. */
  static final String REMEMBERED = "\u00a0†";

  /** Marks one that is doubtful. */
  static final String DOUBTFUL = "\u00a0‡";

  private RuleNames() {}

  /** The rule set, with its variant where it has one, and a mark where it is from memory. */
  static String of(RuleComparison rule, List<RuleComparison> all) {
    return Words.shortened(plain(rule, all), MOST) + mark(rule);
  }

  /** The same without a mark. */
  static String plain(RuleComparison rule, List<RuleComparison> all) {
    return set(rule, all) + rule.variant().map(v -> ", " + v).orElse("");
  }

  /** The place, with the document where a place has several. */
  static String set(RuleComparison rule, List<RuleComparison> all) {
    String place = place(rule.place());
    boolean several =
        all.stream()
            .anyMatch(r -> place(r.place()).equals(place) && !r.title().equals(rule.title()));
    return Words.capital(several ? place + ", " + document(rule.title()) : place);
  }

  /** A title without its subtitle. */
  private static String document(String title) {
    return title.split("[:,]", 2)[0];
  }

  private static String mark(RuleComparison rule) {
    if (!rule.fromMemory()) {
      return "";
    }
    return rule.confidence().filter(c -> c == Confidence.LOW).isPresent() ? DOUBTFUL : REMEMBERED;
  }

  /** The place without what limits it. */
  static String place(String place) {
    int comma = place.indexOf(',');
    return comma < 0 ? place : place.substring(0, comma);
  }

  /** The id of the rule set that a comparison is a variant of. */
  static String setId(RuleComparison rule) {
    int slash = rule.id().indexOf('/');
    return slash < 0 ? rule.id() : rule.id().substring(0, slash);
  }
}
