package org.drysill.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.drysill.report.font.Face;
import org.drysill.report.font.Fonts;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WallNamesTest {
  private static final double WIDTH = 440;
  private static final Setter SETTER = new Setter(new SvgCanvas(), new Fonts());

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4, 7, 12})
  void no_name_lies_on_another_nor_under_a_leader_that_passes_it(int count) {
    List<WallLines.Layer> layers =
        IntStream.range(0, count)
            .mapToObj(
                i ->
                    new WallLines.Layer(
                        "layer of kind " + i,
                        i % 3 == 0 ? 0 : 0.01 * i * i,
                        i % 3 == 0 ? WallLines.Pattern.SOLID : WallLines.Pattern.GROUND))
            .toList();
    WallScale scale = new WallScale(layers, 30, 330);
    WallNames names = new WallNames(layers, SETTER, scale, WIDTH);
    for (int i = 0; i < count; i++) {
      double end = names.start(i) + SETTER.width(layers.get(i).label(), Face.REGULAR);
      assertThat(end).isLessThanOrEqualTo(WIDTH + 1e-6);
      assertThat(names.start(i)).isNotNegative();
      for (int j = i + 1; j < count; j++) {
        if (names.row(i) == names.row(j)) {
          assertThat(end).isLessThan(names.start(j));
        }
        boolean passes = names.row(j) > names.row(i);
        assertThat(passes && scale.middle(j) > names.start(i) && scale.middle(j) < end).isFalse();
      }
    }
    assertThat(names.rows()).isBetween(1, count);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.215})
  void every_layer_has_a_width_and_all_fill_the_plot(double thickness) {
    List<WallLines.Layer> layers =
        List.of(
            new WallLines.Layer("sheet", 0, WallLines.Pattern.SOLID),
            new WallLines.Layer("brick", thickness, WallLines.Pattern.DIAGONAL));
    WallScale scale = new WallScale(layers, 30, 330);
    assertThat(scale.edge(1)).isGreaterThan(scale.edge(0) + 3);
    assertThat(scale.edge(2)).isGreaterThan(scale.edge(1) + 10).isLessThan(scale.right());
    assertThat(scale.x(new WallLines.Point(2, 0, 1))).isEqualTo(scale.edge(2));
    assertThat(scale.x(new WallLines.Point(1, 0.5, 1))).isEqualTo(scale.middle(1));
  }
}
