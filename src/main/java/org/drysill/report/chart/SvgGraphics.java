package org.drysill.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Paint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes strokes and fills as SVG paths. Without a colour nothing is written. */
final class SvgGraphics extends ShapesOnly {
  private final StringBuilder out;
  private Color color = Color.BLACK;
  private Stroke stroke = new BasicStroke();
  private AffineTransform transform = new AffineTransform();
  private Shape clip;

  SvgGraphics(StringBuilder out) {
    this.out = out;
  }

  @Override
  public void draw(Shape shape) {
    if (color == null) {
      return;
    }
    out.append("<path d=\"").append(path(shape)).append("\" style=\"fill:none;stroke:");
    out.append(paint(color));
    if (stroke instanceof BasicStroke basic) {
      out.append(";stroke-width:").append(number(basic.getLineWidth()));
      if (basic.getEndCap() == BasicStroke.CAP_ROUND) {
        out.append(";stroke-linecap:round");
      }
      if (basic.getDashArray() != null) {
        out.append(";stroke-dasharray:");
        for (float dash : basic.getDashArray()) {
          out.append(number(dash)).append(' ');
        }
      }
    }
    out.append("\"/>\n");
  }

  @Override
  public void fill(Shape shape) {
    if (color != null) {
      out.append("<path d=\"").append(path(shape));
      out.append("\" style=\"fill:").append(paint(color)).append("\"/>\n");
    }
  }

  /** The colour as a style variable with its own value behind it, so that a page may darken it. */
  static String paint(Color color) {
    return Ink.of(color)
        .map(ink -> "var(" + ink.variable() + "," + ink.hex() + ")")
        .orElseThrow(() -> new IllegalArgumentException("not a colour of the charts: " + color));
  }

  /** A number with at most two decimals. */
  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private String path(Shape shape) {
    StringBuilder path = new StringBuilder();
    double[] points = new double[6];
    for (PathIterator i = shape.getPathIterator(transform); !i.isDone(); i.next()) {
      int kind = i.currentSegment(points);
      path.append("MLQCZ".charAt(kind));
      for (int c = 0; c < COORDINATES[kind]; c++) {
        path.append(c == 0 ? "" : " ").append(number(points[c]));
      }
    }
    return path.toString();
  }

  /** How many numbers belong to each kind of segment, in the order of {@link PathIterator}. */
  private static final int[] COORDINATES = {2, 2, 4, 6, 0};

  @Override
  public void setColor(Color color) {
    this.color = color;
  }

  @Override
  public Color getColor() {
    return color;
  }

  @Override
  public void setPaint(Paint paint) {
    this.color = (Color) paint;
  }

  @Override
  public Paint getPaint() {
    return color;
  }

  @Override
  public void setStroke(Stroke stroke) {
    this.stroke = stroke;
  }

  @Override
  public Stroke getStroke() {
    return stroke;
  }

  @Override
  public void translate(int x, int y) {
    transform.translate(x, y);
  }

  @Override
  public void translate(double x, double y) {
    transform.translate(x, y);
  }

  @Override
  public void scale(double x, double y) {
    transform.scale(x, y);
  }

  @Override
  public void transform(AffineTransform other) {
    transform.concatenate(other);
  }

  @Override
  public void setTransform(AffineTransform transform) {
    this.transform = new AffineTransform(transform);
  }

  @Override
  public AffineTransform getTransform() {
    return new AffineTransform(transform);
  }

  /** Kept for its reader only: every chart's axes hold all of its data. */
  @Override
  public void setClip(Shape clip) {
    this.clip = clip;
  }

  @Override
  public Shape getClip() {
    return clip;
  }

  @Override
  public void clip(Shape shape) {
    Area both = new Area(shape);
    if (clip != null) {
      both.intersect(new Area(clip));
    }
    clip = both;
  }

  @Override
  public void setRenderingHint(RenderingHints.Key key, Object value) {
    // A path has no pixels to be hinted at.
  }

  @Override
  public Object getRenderingHint(RenderingHints.Key key) {
    return null;
  }
}
