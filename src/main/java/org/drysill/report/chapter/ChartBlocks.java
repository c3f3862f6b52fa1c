package org.drysill.report.chapter;

import java.util.List;
import org.drysill.report.block.ChartBlock;
import org.drysill.report.block.Note;
import org.drysill.report.chart.ChartSpec;

/** Charts as blocks, as high as their own content asks. */
final class ChartBlocks {
  private ChartBlocks() {}

  static ChartBlock of(String id, ChartSpec spec, Note... margin) {
    return new ChartBlock(
        List.of(margin), "chart-" + id, spec, Long.toString(Math.round(spec.heightMm())), false);
  }

  /** A chart across both columns. */
  static ChartBlock wide(String id, ChartSpec spec) {
    return new ChartBlock(
        List.of(), "chart-" + id, spec, Long.toString(Math.round(spec.heightMm())), true);
  }
}
