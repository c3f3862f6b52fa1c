package org.drysill.report.block;

import java.util.List;

/**
 * Figures that came about by one and the same formula.
 *
 * @param number the number of the first of them, such as {@code w12}
 * @param formula the formula in symbols
 * @param sources the documents and clauses
 * @param note what else a checker should know of all of them; may be empty
 * @param items the figures in the order of their numbers
 */
public record WorkingFamily(
    String number, String formula, List<String> sources, String note, List<WorkingEntry> items) {
  /** Copies the lists. */
  public WorkingFamily {
    sources = List.copyOf(sources);
    items = List.copyOf(items);
  }
}
