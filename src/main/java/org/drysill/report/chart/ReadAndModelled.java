package org.drysill.report.chart;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;

/**
 * Readings against a model: in each row a grey bar over the range of the model with a tick at its
 * likely value, and a dot with a thin line for what was read; an open dot where the model cannot
 * explain it.
 *
 * @param text the words around the chart
 * @param axis the common axis of all rows
 * @param rows the rows from top to bottom
 */
public record ReadAndModelled(ChartText text, Axis axis, List<Row> rows) implements ChartSpec {
  /** Copies the list. */
  public ReadAndModelled {
    rows = List.copyOf(rows);
  }

  /**
   * One room.
   *
   * @param label its name
   * @param read what was read, in the unit of the axis; empty where nothing was
   * @param readText the same in words, such as {@code 4.8 read}
   * @param modelled what the model has, in the unit of the axis
   * @param modelledText the same in words, such as {@code 4.0 model}
   * @param explained false where the model cannot explain the reading
   */
  public record Row(
      String label,
      Optional<Range> read,
      String readText,
      Range modelled,
      String modelledText,
      boolean explained) {}

  @Override
  public String kind() {
    return "read-and-modelled";
  }

  @Override
  public double heightMm() {
    return 8 + 7 * rows.size();
  }
}
