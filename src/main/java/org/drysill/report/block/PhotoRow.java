package org.drysill.report.block;

import java.util.List;

/**
 * Photographs side by side.
 *
 * @param cells one or two
 */
public record PhotoRow(List<PhotoCell> cells) {
  /** Copies the list. */
  public PhotoRow {
    cells = List.copyOf(cells);
  }
}
