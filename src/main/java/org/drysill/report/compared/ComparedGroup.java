package org.drysill.report.compared;

import java.util.List;

/**
 * Rows of one quantity.
 *
 * @param title the quantity with its unit
 * @param rows its rows
 */
public record ComparedGroup(String title, List<ComparedRow> rows) {
  /** Copies the list. */
  public ComparedGroup {
    rows = List.copyOf(rows);
  }
}
