package org.drysill.report.chart;

import java.awt.Graphics2D;
import org.drysill.report.font.Face;

/** A canvas that writes the parts of an SVG element. */
final class SvgCanvas implements Canvas {
  private final StringBuilder out = new StringBuilder();
  private final SvgGraphics graphics = new SvgGraphics(out);

  @Override
  public Graphics2D graphics() {
    return graphics;
  }

  @Override
  public void text(String text, double x, double y, Face face, double size, Ink ink) {
    out.append("<text x=\"").append(SvgGraphics.number(x));
    out.append("\" y=\"").append(SvgGraphics.number(y));
    out.append("\" font-size=\"").append(SvgGraphics.number(size));
    if (face.weight() != Face.REGULAR.weight()) {
      out.append("\" font-weight=\"").append(face.weight());
    }
    out.append("\" style=\"fill:").append(SvgGraphics.paint(ink.color())).append("\">");
    out.append(Svg.escaped(text)).append("</text>\n");
  }

  String parts() {
    return out.toString();
  }
}
