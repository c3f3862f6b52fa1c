package org.drysill.report.pdf;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Shape;
import java.util.Map;
import org.drysill.report.chart.ChartPainter;
import org.drysill.report.chart.ChartSpec;
import org.w3c.dom.Element;

/** Draws the charts where the page text has object elements of type {@code chart/…}. */
final class ChartDrawers implements FSObjectDrawerFactory, FSObjectDrawer {
  private static final String TYPE = "chart/";

  private final Map<String, ChartSpec> charts;
  private final EmbeddedFonts fonts;

  ChartDrawers(Map<String, ChartSpec> charts, EmbeddedFonts fonts) {
    this.charts = charts;
    this.fonts = fonts;
  }

  @Override
  public FSObjectDrawer createDrawer(Element element) {
    return isReplacedObject(element) ? this : null;
  }

  @Override
  public boolean isReplacedObject(Element element) {
    return element.getAttribute("type").startsWith(TYPE);
  }

  @Override
  public Map<Shape, String> drawObject(
      Element element,
      double x,
      double y,
      double width,
      double height,
      OutputDevice device,
      RenderingContext context,
      int dotsPerPixel) {
    String id = element.getAttribute("data");
    ChartSpec chart = charts.get(id);
    if (chart == null) {
      throw new IllegalArgumentException("the page shows a chart that is not given: " + id);
    }
    double across = width / dotsPerPixel;
    double down = height / dotsPerPixel;
    device.drawWithGraphics(
        (float) x,
        (float) y,
        (float) across,
        (float) down,
        graphics -> {
          PdfCanvas canvas = new PdfCanvas((PdfBoxGraphics2D) graphics, fonts);
          ChartPainter.paint(chart, canvas, fonts.fonts(), across, down);
        });
    return null;
  }
}
