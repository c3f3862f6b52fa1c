package org.drysill.report.block;

import java.util.List;

/**
 * A table by month with a shade and a numeral in each cell.
 *
 * @param margin notes beside it
 * @param title the sentence that states the message
 * @param corner what the rows are
 * @param rows one for each place
 * @param key what the shades mean
 */
public record HeatMap(
    List<Note> margin, String title, String corner, List<HeatRow> rows, String key)
    implements Block {
  /** Copies the lists. */
  public HeatMap {
    margin = List.copyOf(margin);
    rows = List.copyOf(rows);
  }

  @Override
  public String kind() {
    return "heatmap";
  }
}
