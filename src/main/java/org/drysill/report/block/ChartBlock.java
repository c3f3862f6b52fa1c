package org.drysill.report.block;

import java.util.List;
import org.drysill.report.chart.ChartSpec;

/**
 * A chart.
 *
 * @param margin notes beside it
 * @param id its id within the report
 * @param spec what it shows
 * @param heightMm its height [mm]
 * @param wide true where it stands across the reading and the margin column
 */
public record ChartBlock(
    List<Note> margin, String id, ChartSpec spec, String heightMm, boolean wide) implements Block {
  /** Copies the lists. */
  public ChartBlock {
    margin = List.copyOf(margin);
  }

  @Override
  public String kind() {
    return "chart";
  }
}
