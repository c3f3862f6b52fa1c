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
  private static final int LONGEST_WHOLE = 1500;

  /** Copies the lists. */
  public WorkingFamily {
    sources = List.copyOf(sources);
    items = List.copyOf(items);
  }

  /** Whether its formula and its first figure may stay together: a column has some 90 lines. */
  public boolean whole() {
    int sourced = sources.stream().mapToInt(String::length).sum();
    WorkingEntry first = items.get(0);
    int entry = first.name().length() + first.inputs().length() + first.note().length();
    return formula.length() + sourced + note.length() + entry < LONGEST_WHOLE;
  }
}
