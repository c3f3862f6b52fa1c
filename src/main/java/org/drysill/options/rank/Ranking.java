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
        "Unsafe appliances, water from leaks, rain or ground, and fans that are there and do not"
            + " work come before every measure.",
        "Then come measures that are safe as the home stands, before those that need a safety test"
            + " first.",
        "Among them counts how much of what the home likely lacks a measure closes: air, and months"
            + " of mould risk on walls and corners, in quarters, so that a trifle does not win for"
            + " being cheap.",
        "Among those that go as far a stop-gap, which relieves the sign while it is used and leaves"
            + " the cause, comes last.",
        "Then the lower yearly cost over the horizon: purchase, replacement, energy and upkeep.",
        "Then fewer months with wet glass, then the lower first cost.",
        "What shows no effect here, and what is dearer than the budget, is listed apart.");
  }

  /** The entries, best first. */
  public List<Entry> ranked(List<Entry> entries) {
    return entries.stream().sorted(order()).toList();
  }

  Comparator<Entry> order() {
    return Comparator.comparing((Entry e) -> !e.admissible())
        .thenComparing(Comparator.comparingLong((Entry e) -> e.steps(step)).reversed())
        .thenComparing(Entry::isStopGap)
        .thenComparingDouble(Entry::annualCost)
        .thenComparingDouble(Entry::wetGlassMonths)
        .thenComparingDouble(Entry::firstCost)
        .thenComparing(e -> e.costed().studied().candidate().measure().name())
        .thenComparing(e -> e.costed().studied().candidate().id());
  }
}
