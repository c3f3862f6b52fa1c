package org.drysill.report.block;

import java.util.List;

/**
 * A row of a table by month.
 *
 * @param label what it is about
 * @param cells twelve, January first
 */
public record HeatRow(String label, List<HeatCell> cells) {
  /** Copies the lists. */
  public HeatRow {
    cells = List.copyOf(cells);
  }
}
