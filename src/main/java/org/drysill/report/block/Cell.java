package org.drysill.report.block;

import java.util.List;
import java.util.Optional;

/**
 * A cell of a table.
 *
 * @param text its words; may be empty
 * @param small more words in small grey type; may be empty
 * @param mark the mark of a verdict: {@code meets}, {@code short}, {@code unknown}; of a change:
 *     {@code seen}, {@code unseen}; or empty
 * @param bar a bar with its range and requirement
 * @param workings the numbers of workings that stand behind it
 */
public record Cell(
    String text, String small, String mark, Optional<Bar> bar, List<String> workings) {
  /** Copies the list. */
  public Cell {
    workings = List.copyOf(workings);
  }

  /** The same with the numbers of workings. */
  public Cell with(List<String> numbers) {
    return new Cell(text, small, mark, bar, numbers);
  }
}
