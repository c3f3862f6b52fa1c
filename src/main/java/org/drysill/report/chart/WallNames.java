package org.drysill.report.chart;

import java.util.ArrayList;
import java.util.List;
import org.drysill.report.font.Face;

/**
 * The names of layers under a wall. A name stands within its layer where it fits; else it begins
 * under the middle of its layer, the further down the nearer to the room, so that no leader runs
 * through a name.
 */
final class WallNames {
  private static final double GAP = 6;

  private final List<WallLines.Layer> layers;
  private final Setter setter;
  private final WallScale scale;
  private final double[] starts;
  private final int[] rows;

  WallNames(List<WallLines.Layer> layers, Setter setter, WallScale scale, double width) {
    this.layers = layers;
    this.setter = setter;
    this.scale = scale;
    this.starts = new double[layers.size()];
    this.rows = new int[layers.size()];
    place(width);
  }

  private void place(double width) {
    List<Double> taken = new ArrayList<>();
    for (int i = layers.size() - 1; i >= 0; i--) {
      double length = setter.width(layers.get(i).label(), Face.REGULAR);
      boolean fits = length < scale.edge(i + 1) - scale.edge(i);
      double start = fits ? scale.middle(i) - length / 2 : scale.middle(i);
      starts[i] = Math.max(0, Math.min(start, width - length));
      int row = below(i, starts[i] + length + GAP);
      while (row < taken.size() && starts[i] + length + GAP > taken.get(row)) {
        row++;
      }
      rows[i] = row;
      while (row >= taken.size()) {
        taken.add(width + GAP);
      }
      taken.set(row, starts[i]);
    }
  }

  /** The first row in which a name lies under every name whose leader it would cross. */
  private int below(int layer, double end) {
    int row = 0;
    for (int i = layer + 1; i < rows.length && scale.middle(i) < end; i++) {
      row = Math.max(row, rows[i] + 1);
    }
    return row;
  }

  /** How many rows they take. */
  int rows() {
    int most = 0;
    for (int row : rows) {
      most = Math.max(most, row);
    }
    return most + 1;
  }

  /** Where a name begins. */
  double start(int layer) {
    return starts[layer];
  }

  /** The row that a name stands in, 0 for the uppermost. */
  int row(int layer) {
    return rows[layer];
  }

  void paint(double top) {
    for (int i = 0; i < layers.size(); i++) {
      double baseline = top + 13 + rows[i] * Setter.LINE_HEIGHT;
      double x = scale.middle(i);
      setter.line(x, top - 3, x, baseline - 9.5, Ink.LINE, 0.5);
      setter.left(layers.get(i).label(), starts[i], baseline, Face.REGULAR, Ink.TEXT);
    }
  }
}
