package org.drysill.report.block;

import java.util.List;

/** The height that the beginning of a table asks for: title, head and first rows [mm]. */
final class TableRoom {
  private static final double READING = 120;
  private static final double WHOLE = 172;
  private static final double SHORT_TABLE = 34;

  /** What a table asks for below each row, less what a row has of it. */
  private static final double EACH_ROW = 6;

  private static final double TALL = 45;

  private final Grid grid;
  private final double letter;
  private final double line;
  private final double padding;

  TableRoom(Grid grid) {
    this.grid = grid;
    this.letter = grid.dense() ? 1.5 : 1.7;
    this.line = grid.dense() ? 3.5 : 4.3;
    this.padding = grid.dense() ? 0.9 : 2.5;
  }

  /** A short table is asked for whole, of others the head and two rows that belong together. */
  double start() {
    double above = title() + head() + EACH_ROW;
    double rows = grid.rows().stream().mapToDouble(this::row).sum();
    return above
        + (rows <= SHORT_TABLE ? rows + foot() + workings() : Math.max(first(), withNext(0)));
  }

  /** Whether a row is higher than what may stay empty at a page's foot for its sake. */
  boolean isTall(Row row) {
    return row(row) > TALL;
  }

  private double title() {
    return grid.title().isEmpty() ? 0 : 4 + 4.3 * Room.lines(grid.title(), width(), 1.75);
  }

  private double head() {
    double lines = 1;
    for (int column = 0; column < grid.columns().size(); column++) {
      lines = Math.max(lines, Room.lines(grid.columns().get(column).head(), width(column), 1.7));
    }
    return 2 + 3.8 * lines;
  }

  /** The first row, and the next where the first is a heading or low. */
  private double first() {
    List<Row> rows = grid.rows();
    double height = row(rows.get(0));
    return rows.size() > 1 && (rows.get(0).part() || height < 12)
        ? height + row(rows.get(1))
        : height;
  }

  /**
   * A row, and what may not be parted from it: the next one where it heads a group, with what may
   * not be parted from that one; the last row, the foot and the workings where it is one of the
   * last two, so that no last row stands alone. Of a row that may be cut its beginning.
   */
  double withNext(int index) {
    int last = grid.rows().size() - 1;
    double own = beginning(index);
    if (index == last) {
      return own + foot() + workings();
    } else if (index == last - 1) {
      return own + beginning(last) + foot() + workings();
    }
    return grid.rows().get(index).part() ? own + withNext(index + 1) : own;
  }

  private double beginning(int index) {
    return Math.min(TALL, row(grid.rows().get(index)));
  }

  /** Numbers of workings stand under a wide table. */
  private double workings() {
    return grid.wide() ? 6 * grid.margin().size() : 0;
  }

  private double foot() {
    return grid.foot().isEmpty() ? 0 : 3 + 3.7 * Room.lines(grid.foot(), width(), 1.45);
  }

  private double row(Row row) {
    double lines = 1;
    for (int column = 0; column < row.cells().size(); column++) {
      Cell cell = row.cells().get(column);
      double width = width(column);
      lines = Math.max(lines, lines(cell, width, grid.columns().get(column)));
    }
    return padding + line * lines;
  }

  /** Bounds stand beside a number, other small words under what they belong to. */
  private double lines(Cell cell, double width, Column column) {
    String marks = " w10.1".repeat(cell.workings().size());
    if (cell.small().isEmpty() || column.numbers()) {
      return Room.lines(cell.text() + " " + cell.small() + marks, width, letter);
    }
    return Room.lines(cell.text(), width, letter) + Room.lines(cell.small() + marks, width, 1.55);
  }

  private double width() {
    return grid.wide() ? WHOLE : READING;
  }

  /** The width of a column without its padding; those without a width share what is left. */
  private double width(int column) {
    int own = grid.columns().get(column).widthMm();
    if (own > 0) {
      return own - 2.4;
    }
    int taken = grid.columns().stream().mapToInt(Column::widthMm).sum();
    long sharing = grid.columns().stream().filter(c -> c.widthMm() == 0).count();
    return Math.max(8, (width() - taken) / sharing - 2.4);
  }
}
