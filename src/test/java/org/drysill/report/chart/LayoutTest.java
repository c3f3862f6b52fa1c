package org.drysill.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class LayoutTest {
  @Test
  void labels_that_would_touch_are_moved_apart_in_their_order() {
    double[] places = Spread.apart(new double[] {50, 52, 20}, 12, 0, 100);
    assertThat(places[1] - places[0]).isGreaterThanOrEqualTo(12 - 1e-6);
    assertThat(places[2]).isEqualTo(20);
  }

  @Test
  void labels_stay_within_their_bounds() {
    double[] places = Spread.apart(new double[] {99, 99, 99}, 12, 0, 100);
    assertThat(Arrays.stream(places).boxed()).allMatch(place -> place >= 0 && place <= 100 + 1e-9);
  }

  @Test
  void no_two_labels_of_a_crowd_of_points_overlap() {
    LabelPlaces places = new LabelPlaces(new Rectangle2D.Double(0, 0, 400, 250));
    List<Rectangle2D> boxes = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      places.takeDot(200 + i, 120 - i, 4);
    }
    for (int i = 0; i < 12; i++) {
      boxes.add(places.find(200 + i, 120 - i, 4, 90, 12).box());
    }
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(boxes.get(i).intersects(boxes.get(j))).as(i + " and " + j).isFalse();
      }
    }
  }
}
