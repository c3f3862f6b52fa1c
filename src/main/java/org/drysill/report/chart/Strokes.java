package org.drysill.report.chart;

import java.awt.BasicStroke;

/** The strokes of charts. */
final class Strokes {
  private Strokes() {}

  /** A plain line that ends where it ends. */
  static BasicStroke butt(double thickness) {
    return new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
  }

  /** A line with round joints. */
  static BasicStroke round(double thickness) {
    return new BasicStroke((float) thickness, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
  }

  /** A line of dots. */
  static BasicStroke dotted(double thickness) {
    float[] dots = {1.4f, 2.4f};
    return new BasicStroke(
        (float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, dots, 0f);
  }

  /** A broken line. */
  static BasicStroke dashed(double thickness) {
    float[] dash = {4f, 3f};
    return new BasicStroke(
        (float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, dash, 0f);
  }
}
