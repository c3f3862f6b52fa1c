package org.drysill.report.block;

import java.util.List;

/**
 * A row of a table.
 *
 * @param cells one for each column
 * @param strong true for a sum or what governs
 */
public record Row(List<Cell> cells, boolean strong) {
  /** Copies the lists. */
  public Row {
    cells = List.copyOf(cells);
  }
}
