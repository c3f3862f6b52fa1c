package org.drysill.options.rank;

import java.util.Comparator;
import java.util.List;

/**
 * The order of single measures. Later steps count only where all earlier ones are equal; an unknown
 * price goes behind every known one.
 *
 * @param step coarseness in which progress is compared [1]
 */
public record Ranking(double step) {
  /** The rule in plain sentences. */
  public List<String> rule() {
    return List.of(
        "Unsafe appliances and water from leaks, rain or ground come before every measure.",
        "First come measures that are safe as the home stands; those that need a safety test"
            + " before the work come after them.",
        "Then counts how surely the home would have enough air and walls free of mould risk: yes,"
            + " not told, no.",
        "Then how far the measure goes towards both, in coarse steps, so that a trifle does not"
            + " win for being cheap.",
        "Then the lower yearly cost over the horizon: purchase, replacement, energy and upkeep.",
        "Then fewer months with wet glass, then the lower first cost, then the name.");
  }

  /** The entries, best first. */
  public List<Entry> ranked(List<Entry> entries) {
    return entries.stream().sorted(order()).toList();
  }

  Comparator<Entry> order() {
    return Comparator.comparing((Entry e) -> !e.admissible())
        .thenComparing(Comparator.comparingInt(Entry::targets).reversed())
        .thenComparing(Comparator.comparingLong((Entry e) -> e.progress(step)).reversed())
        .thenComparingDouble(Entry::annualCost)
        .thenComparingDouble(Entry::wetGlassMonths)
        .thenComparingDouble(Entry::firstCost)
        .thenComparing(e -> e.costed().studied().candidate().measure().name())
        .thenComparing(e -> e.costed().studied().candidate().id());
  }
}
