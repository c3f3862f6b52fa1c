package org.drysill.report.block;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A table.
 *
 * @param margin notes beside it
 * @param title a sentence above it; may be empty
 * @param columns its columns
 * @param rows its rows
 * @param foot words under it; may be empty
 * @param wide true where it stands across the reading and the margin column
 * @param dense true where it is looked things up in rather than read
 */
public record Grid(
    List<Note> margin,
    String title,
    List<Column> columns,
    List<Row> rows,
    String foot,
    boolean wide,
    boolean dense)
    implements Block {
  /** Width of a column of numbers or letters that rows go by [mm]. */
  private static final int LONGEST_KEY = 16;

  /** Copies the lists. */
  public Grid {
    margin = List.copyOf(margin);
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** A table in the reading column. */
  public Grid(List<Note> margin, String title, List<Column> columns, List<Row> rows, String foot) {
    this(margin, title, columns, rows, foot, false, false);
  }

  /** A table across both columns; nothing can stand beside it. */
  public static Grid wide(String title, List<Column> columns, List<Row> rows, String foot) {
    return new Grid(List.of(), title, columns, rows, foot, true, false);
  }

  /** The same in small type. */
  public Grid densely() {
    return new Grid(margin, title, columns, rows, foot, wide, true);
  }

  /** Whether its first column is but a number or a letter, and the words stand in the next. */
  public boolean keyed() {
    return columns.size() > 1
        && columns.get(0).widthMm() > 0
        && columns.get(0).widthMm() <= LONGEST_KEY
        && !columns.get(1).numbers();
  }

  /** For each row whether it is so high that a page's end may cut it. */
  public List<Boolean> tall() {
    TableRoom room = new TableRoom(this);
    return rows.stream().map(room::isTall).toList();
  }

  /**
   * What each row asks for where it begins [mm]: the head of a group has room for its first row,
   * the last two stay with what stands under the table.
   */
  public List<String> rowRooms() {
    TableRoom room = new TableRoom(this);
    return IntStream.range(0, rows.size())
        .mapToObj(i -> Long.toString(Math.round(room.withNext(i))))
        .toList();
  }

  @Override
  public String kind() {
    return "grid";
  }
}
