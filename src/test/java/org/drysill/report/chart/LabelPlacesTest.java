package org.drysill.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LabelPlacesTest {
  private static final double RADIUS = 4;
  private static final double HEIGHT = 11;

  /** Three points on the base line, each nearer to the next than its label is long. */
  @Test
  void labels_on_one_line_stand_apart() {
    LabelPlaces places = new LabelPlaces(new Rectangle2D.Double(0, 0, 400, 100));
    double[] xs = {40, 80, 130};
    for (double x : xs) {
      places.takeDot(x, 92, RADIUS);
    }
    List<Rectangle2D> boxes = new ArrayList<>();
    for (double x : xs) {
      boxes.add(places.find(x, 92, RADIUS, 60, HEIGHT).box());
    }
    for (Rectangle2D one : boxes) {
      for (Rectangle2D other : boxes) {
        boolean sameLine = Math.abs(one.getCenterY() - other.getCenterY()) < HEIGHT;
        if (!one.equals(other) && sameLine) {
          double gap = Math.max(one.getMinX() - other.getMaxX(), other.getMinX() - one.getMaxX());
          assertThat(gap).isGreaterThanOrEqualTo(5);
        }
      }
    }
  }
}
