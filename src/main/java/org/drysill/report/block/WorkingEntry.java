package org.drysill.report.block;

import java.util.List;

/**
 * How one figure came about.
 *
 * @param number its number, such as {@code w12}
 * @param name what it is
 * @param value its value with unit and bounds
 * @param basis on what it rests
 * @param formula the formula in symbols
 * @param inputs what was put in, one line each
 * @param sources the documents and clauses
 * @param note what else a checker should know; may be empty
 */
public record WorkingEntry(
    String number,
    String name,
    String value,
    String basis,
    String formula,
    List<String> inputs,
    List<String> sources,
    String note) {
  /** Copies the lists. */
  public WorkingEntry {
    inputs = List.copyOf(inputs);
    sources = List.copyOf(sources);
  }
}
