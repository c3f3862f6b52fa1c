package org.drysill.report.chart;

import java.util.List;

/**
 * Where the layers of a wall stand across a chart: in proportion to their thickness, but none so
 * thin that it could not be seen.
 */
final class WallScale {
  private static final double AIR = 24;
  private static final double SHEET = 4;
  private static final double THINNEST = 15;

  private final double left;
  private final double right;
  private final double[] edges;

  WallScale(List<WallLines.Layer> layers, double left, double width) {
    this.left = left;
    this.right = left + width;
    this.edges = edges(layers, left + AIR, width - 2 * AIR);
  }

  private static double[] edges(List<WallLines.Layer> layers, double from, double width) {
    double fixed = layers.stream().mapToDouble(WallScale::least).sum();
    double thickness = layers.stream().mapToDouble(WallLines.Layer::thickness).sum();
    double each = thickness > 0 ? Math.max(0, width - fixed) / thickness : 0;
    double[] edges = new double[layers.size() + 1];
    edges[0] = from;
    for (int i = 0; i < layers.size(); i++) {
      edges[i + 1] = edges[i] + least(layers.get(i)) + each * layers.get(i).thickness();
    }
    return edges;
  }

  private static double least(WallLines.Layer layer) {
    return layer.pattern() == WallLines.Pattern.SOLID ? SHEET : THINNEST;
  }

  double left() {
    return left;
  }

  double right() {
    return right;
  }

  /** Where a layer begins. */
  double edge(int layer) {
    return edges[layer];
  }

  double middle(int layer) {
    return (edges[layer] + edges[layer + 1]) / 2;
  }

  /** Where a point lies. */
  double x(WallLines.Point point) {
    int layer = Math.min(point.layer(), edges.length - 2);
    double share = point.layer() > layer ? 1 : point.share();
    return edges[layer] + share * (edges[layer + 1] - edges[layer]);
  }
}
