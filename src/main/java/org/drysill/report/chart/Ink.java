package org.drysill.report.chart;

import java.awt.Color;
import java.util.Locale;
import java.util.Optional;

/** The colours of every chart: ink, four greys, one blue-grey for data, and paper. */
public enum Ink {
  /** Text and what is asked. */
  INK(0x1b2126),
  /** Quiet text. */
  TEXT(0x46515a),
  /** Axis text and quiet lines. */
  QUIET(0x5c6670),
  /** Lines of axes, bars that are not in question. */
  LINE(0x87919a),
  /** Grid lines. */
  GRID(0xcfd5da),
  /** Bands and the ground of bars. */
  GROUND(0xeef1f3),
  /** Data. */
  DATA(0x7d93a5),
  /** The paper. */
  PAPER(0xffffff);

  private final int rgb;

  Ink(int rgb) {
    this.rgb = rgb;
  }

  /** The colour itself. */
  public Color color() {
    return new Color(rgb);
  }

  String hex() {
    return String.format(Locale.ROOT, "#%06x", rgb);
  }

  /** The name of the style variable by which a page may lend it another colour on a screen. */
  String variable() {
    return "--" + name().toLowerCase(Locale.ROOT);
  }

  static Optional<Ink> of(Color color) {
    for (Ink ink : values()) {
      if (ink.rgb == (color.getRGB() & 0xffffff)) {
        return Optional.of(ink);
      }
    }
    return Optional.empty();
  }
}
