package org.drysill.report.block;

import java.util.List;

/**
 * A row of a table.
 *
 * @param cells one for each column
 * @param strong true for a sum or what governs
 * @param part true where it heads a group of rows, from which it is not parted
 */
public record Row(List<Cell> cells, boolean strong, boolean part) {
  /** A row that heads no group. */
  public Row(List<Cell> cells, boolean strong) {
    this(cells, strong, false);
  }

  /** Copies the lists. */
  public Row {
    cells = List.copyOf(cells);
  }
}
