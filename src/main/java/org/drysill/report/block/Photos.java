package org.drysill.report.block;

import java.util.List;

/**
 * Photographs in rows of two, across the reading and the margin column.
 *
 * @param margin notes beside it; none has room
 * @param rows the rows
 */
public record Photos(List<Note> margin, List<PhotoRow> rows) implements Block {
  /** Copies the lists. */
  public Photos {
    margin = List.copyOf(margin);
    rows = List.copyOf(rows);
  }

  /** Photographs. */
  public static Photos of(List<PhotoRow> rows) {
    return new Photos(List.of(), rows);
  }

  @Override
  public String kind() {
    return "photos";
  }
}
