package org.drysill.report.block;

import java.util.List;

/**
 * A table.
 *
 * @param margin notes beside it
 * @param title a sentence above it; may be empty
 * @param columns its columns
 * @param rows its rows
 * @param foot words under it; may be empty
 */
public record Grid(
    List<Note> margin, String title, List<Column> columns, List<Row> rows, String foot)
    implements Block {
  /** Copies the lists. */
  public Grid {
    margin = List.copyOf(margin);
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  @Override
  public String kind() {
    return "grid";
  }
}
