package org.drysill.report.chart;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Diagonal stripes within a shape, as a shape of their own: a clip would not survive a PDF. */
final class Stripes {
  private Stripes() {}

  /**
   * Stripes that rise to the right, or fall.
   *
   * @param spacing from one stripe to the next along the bottom
   * @param thickness of a stripe
   */
  static Area within(Shape shape, double spacing, double thickness, boolean rising) {
    Rectangle2D bounds = shape.getBounds2D();
    Area stripes = new Area();
    double height = bounds.getHeight();
    double across = thickness * Math.sqrt(2);
    double first = Math.floor((bounds.getMinX() - height) / spacing) * spacing;
    double from = rising ? bounds.getMaxY() : bounds.getMinY();
    double to = rising ? bounds.getMinY() : bounds.getMaxY();
    for (double x = first; x < bounds.getMaxX(); x += spacing) {
      Path2D stripe = new Path2D.Double();
      stripe.moveTo(x, from);
      stripe.lineTo(x + height, to);
      stripe.lineTo(x + height + across, to);
      stripe.lineTo(x + across, from);
      stripe.closePath();
      stripes.add(new Area(stripe));
    }
    stripes.intersect(new Area(shape));
    return stripes;
  }
}
