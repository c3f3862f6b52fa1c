package org.drysill.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Charts on a copier that knows grey alone: each colour becomes the grey of its luminance, and what
 * must be told apart is told by contrast, by dashes and thickness, or by a pattern.
 */
class GreyTest {
  /** Text asks for 4.5 to 1, lines and areas that carry meaning for 3 to 1. */
  @ParameterizedTest
  @CsvSource({
    "INK, PAPER, 4.5",
    "TEXT, PAPER, 4.5",
    "QUIET, PAPER, 4.5",
    "INK, GROUND, 4.5",
    "QUIET, GROUND, 4.5",
    "INK, GRID, 4.5",
    "DATA, PAPER, 3",
    "LINE, PAPER, 3",
    "INK, DATA, 3",
    "TEXT, GRID, 3"
  })
  void stands_out_from_what_it_lies_on(Ink ink, Ink ground, double least) {
    assertThat(contrast(grey(ink), grey(ground))).isGreaterThanOrEqualTo(least);
  }

  @ParameterizedTest
  @EnumSource(MonthLines.Style.class)
  void every_line_is_seen(MonthLines.Style style) {
    assertThat(contrast(grey(LineEnds.ink(style)), grey(Ink.PAPER))).isGreaterThanOrEqualTo(3);
  }

  /** Thickness and dashes without the ink: a copy may turn every ink into the same black. */
  @Test
  void lines_are_told_apart_without_their_ink() {
    Set<List<Object>> strokes =
        Arrays.stream(MonthLines.Style.values())
            .map(LineEnds::stroke)
            .map(GreyTest::shape)
            .collect(Collectors.toSet());
    assertThat(strokes).hasSameSizeAs(MonthLines.Style.values());
  }

  private static List<Object> shape(BasicStroke stroke) {
    float[] dashes = stroke.getDashArray();
    return dashes == null
        ? List.of("solid", Math.round(2 * stroke.getLineWidth()))
        : List.of("broken", Arrays.toString(dashes));
  }

  /** Parts that touch in a stacked bar: plain areas far apart in grey, the others have stripes. */
  @Test
  void areas_without_stripes_are_apart_in_grey() {
    List<Ink> plain = List.of(Ink.PAPER, Ink.GRID, Ink.DATA, Ink.TEXT);
    for (int i = 1; i < plain.size(); i++) {
      assertThat(contrast(grey(plain.get(i - 1)), grey(plain.get(i))))
          .as(plain.get(i - 1) + " beside " + plain.get(i))
          .isGreaterThanOrEqualTo(1.4);
    }
  }

  /** The relative luminance, which is that of the grey, 0 to 1. */
  private static double grey(Ink ink) {
    Color color = ink.color();
    return 0.2126 * linear(color.getRed())
        + 0.7152 * linear(color.getGreen())
        + 0.0722 * linear(color.getBlue());
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static double contrast(double one, double other) {
    return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
  }
}
