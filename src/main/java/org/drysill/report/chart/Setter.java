package org.drysill.report.chart;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Verdict;
import org.drysill.report.font.Face;
import org.drysill.report.font.Fonts;
import org.drysill.report.font.Printable;

/** Sets text and draws plain shapes on a canvas, in the sizes and strokes of all charts. */
final class Setter {
  /** The size of all text in charts: 7.8 pt, the smallest of the report. */
  static final double SIZE = 10.4;

  /** From one line of text to the next. */
  static final double LINE_HEIGHT = 12.4;

  /** From the middle of a line of digits or capitals down to its baseline. */
  static final double HALF_CAP = 3.7;

  private final Canvas canvas;
  private final Fonts fonts;

  Setter(Canvas canvas, Fonts fonts) {
    this.canvas = canvas;
    this.fonts = fonts;
  }

  Canvas canvas() {
    return canvas;
  }

  double width(String text, Face face) {
    return fonts.width(face, printable(text), SIZE);
  }

  void left(String text, double x, double baseline, Face face, Ink ink) {
    String line = printable(text);
    if (!line.isBlank()) {
      canvas.text(line, x, baseline, face, SIZE, ink);
    }
  }

  void right(String text, double x, double baseline, Face face, Ink ink) {
    left(text, x - width(text, face), baseline, face, ink);
  }

  void centre(String text, double x, double baseline, Face face, Ink ink) {
    left(text, x - width(text, face) / 2, baseline, face, ink);
  }

  /** Sets text in lines no wider than given, their block centred on a height. */
  void block(String text, double x, double middle, double width, Face face, Ink ink) {
    List<String> lines = lines(text, width, face);
    double baseline = middle + HALF_CAP - (lines.size() - 1) * LINE_HEIGHT / 2;
    for (String line : lines) {
      left(line, x, baseline, face, ink);
      baseline += LINE_HEIGHT;
    }
  }

  /** Cuts text into at most two lines; what does not fit ends in an ellipsis. */
  List<String> lines(String text, double width, Face face) {
    List<String> lines = new ArrayList<>(List.of(""));
    for (String word : text.strip().split("\\s+", -1)) {
      int last = lines.size() - 1;
      String longer = lines.get(last).isEmpty() ? word : lines.get(last) + " " + word;
      if (width(longer, face) <= width || lines.get(last).isEmpty() || last == 1) {
        lines.set(last, longer);
      } else {
        lines.add(word);
      }
    }
    lines.replaceAll(line -> clipped(line, width, face));
    return lines;
  }

  /** Text no wider than given; what is too long ends in an ellipsis. */
  String clipped(String text, double width, Face face) {
    String kept = text;
    while (kept.length() > 1 && width(kept.equals(text) ? kept : kept + "…", face) > width) {
      kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)).stripTrailing();
    }
    return kept.equals(text) ? text : kept + "…";
  }

  void line(double x1, double y1, double x2, double y2, Ink ink, double thickness) {
    canvas.graphics().setColor(ink.color());
    canvas.graphics().setStroke(Strokes.butt(thickness));
    canvas.graphics().draw(new Line2D.Double(x1, y1, x2, y2));
  }

  void fill(double x, double y, double width, double height, Ink ink) {
    fill(new Rectangle2D.Double(x, y, width, height), ink);
  }

  void fill(Shape shape, Ink ink) {
    canvas.graphics().setColor(ink.color());
    canvas.graphics().fill(shape);
  }

  void outline(Shape shape, Ink ink, double thickness) {
    canvas.graphics().setColor(ink.color());
    canvas.graphics().setStroke(Strokes.butt(thickness));
    canvas.graphics().draw(shape);
  }

  void dot(double x, double y, double radius, boolean filled) {
    Ellipse2D circle = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    canvas.graphics().setColor((filled ? Ink.INK : Ink.PAPER).color());
    canvas.graphics().fill(circle);
    canvas.graphics().setColor(Ink.INK.color());
    canvas.graphics().setStroke(Strokes.butt(1));
    canvas.graphics().draw(circle);
  }

  /** The mark of a verdict: an open, filled or half-filled square, centred on a height. */
  void mark(Verdict verdict, double x, double middle) {
    double side = 9;
    double y = middle - side / 2;
    double filled =
        switch (verdict) {
          case MEETS -> 0;
          case SHORT -> side;
          case UNKNOWN -> side / 2;
        };
    if (filled > 0) {
      fill(x, y, filled, side, Ink.INK);
    }
    canvas.graphics().setColor(Ink.INK.color());
    canvas.graphics().setStroke(Strokes.butt(0.9));
    canvas.graphics().draw(new Rectangle2D.Double(x, y, side, side));
  }

  /** The word of a verdict. */
  static String word(Verdict verdict) {
    return switch (verdict) {
      case MEETS -> "meets";
      case SHORT -> "short";
      case UNKNOWN -> "not told";
    };
  }

  private String printable(String text) {
    return new Printable(fonts).of(text, missing -> {});
  }
}
