package org.drysill.report.pages;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;

/**
 * A report as it is printed.
 *
 * @param sheets its pages
 * @param links its links
 */
record PrintedReport(List<Sheet> sheets, List<Link> links) {
  /**
   * A link.
   *
   * @param page the page that it stands on, from 1
   * @param text its words without spaces
   * @param target the page that it leads to, from 1; 0 where it leads nowhere
   * @param top where on that page, in points from the top
   */
  record Link(int page, String text, int target, double top) {}

  static PrintedReport of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Structure structure = new Structure(document);
      List<Sheet> sheets = new ArrayList<>();
      List<Link> links = new ArrayList<>();
      int number = 0;
      for (PDPage page : document.getPages()) {
        Sheet sheet = PageReader.read(page, ++number, structure);
        sheets.add(sheet);
        for (PDAnnotation annotation : page.getAnnotations()) {
          if (annotation instanceof PDAnnotationLink link) {
            links.add(link(document, sheet, link));
          }
        }
      }
      return new PrintedReport(sheets, links);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Link link(PDDocument document, Sheet sheet, PDAnnotationLink link)
      throws IOException {
    PDRectangle area = link.getRectangle();
    Rectangle2D box =
        new Rectangle2D.Double(
            area.getLowerLeftX(),
            sheet.height() - area.getUpperRightY(),
            area.getWidth(),
            area.getHeight());
    PDDestination to =
        link.getAction() instanceof PDActionGoTo go ? go.getDestination() : link.getDestination();
    int target = 0;
    double top = 0;
    if (to instanceof PDPageDestination place && place.getPage() != null) {
      target = document.getPages().indexOf(place.getPage()) + 1;
      if (place instanceof PDPageXYZDestination exact) {
        top = sheet.height() - exact.getTop();
      }
    }
    return new Link(sheet.number(), sheet.text(box), target, top);
  }
}
