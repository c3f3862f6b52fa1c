package org.drysill.report.pages;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Reads off a page where its letters, lines and pictures stand. */
final class PageReader extends PDFGraphicsStreamEngine {
  static final double CAPITAL = 0.68;
  private static final double SLACK = 0.6;

  private final Structure structure;
  private final float height;
  private final List<Glyph> glyphs = new ArrayList<>();
  private final List<Rectangle2D> drawn = new ArrayList<>();
  private final Deque<Structure.Place> marked = new ArrayDeque<>();
  private GeneralPath path = new GeneralPath();
  private int clipRule = -1;

  private PageReader(PDPage page, Structure structure) {
    super(page);
    this.structure = structure;
    this.height = page.getMediaBox().getHeight();
  }

  static Sheet read(PDPage page, int number, Structure structure) throws IOException {
    PageReader reader = new PageReader(page, structure);
    reader.processPage(page);
    return new Sheet(
        number,
        page.getMediaBox().getWidth(),
        page.getMediaBox().getHeight(),
        reader.glyphs,
        reader.drawn);
  }

  @Override
  protected void showGlyph(Matrix place, PDFont font, int code, Vector step) throws IOException {
    String text = font.toUnicode(code);
    if (text == null || text.isBlank() || text.equals("\u00a0")) {
      return;
    }
    AffineTransform transform = place.createAffineTransform();
    Rectangle2D flat = new Rectangle2D.Double(0, 0, step.getX(), CAPITAL);
    Rectangle2D box = transform.createTransformedShape(flat).getBounds2D();
    glyphs.add(
        new Glyph(
            text,
            fromTop(box),
            font.getName().toLowerCase(Locale.ROOT).contains("bold"),
            Math.abs(place.getShearX()) < 1e-6,
            cut(box),
            marked.isEmpty() ? Structure.Place.NONE : marked.peek()));
  }

  private boolean cut(Rectangle2D box) {
    Rectangle2D area = getGraphicsState().getCurrentClippingPath().getBounds2D();
    return box.getMinX() < area.getMinX() - SLACK
        || box.getMaxX() > area.getMaxX() + SLACK
        || box.getMinY() < area.getMinY() - SLACK
        || box.getMaxY() > area.getMaxY() + SLACK;
  }

  private Rectangle2D fromTop(Rectangle2D box) {
    return new Rectangle2D.Double(
        box.getX(), height - box.getMaxY(), box.getWidth(), box.getHeight());
  }

  @Override
  public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
    int mcid = properties == null ? -1 : properties.getInt(COSName.MCID, -1);
    Structure.Place outer = marked.isEmpty() ? Structure.Place.NONE : marked.peek();
    marked.push(mcid < 0 ? outer : structure.place(getPage(), mcid));
  }

  @Override
  public void endMarkedContentSequence() {
    marked.poll();
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    moveTo((float) p0.getX(), (float) p0.getY());
    lineTo((float) p1.getX(), (float) p1.getY());
    lineTo((float) p2.getX(), (float) p2.getY());
    lineTo((float) p3.getX(), (float) p3.getY());
    path.closePath();
  }

  @Override
  public void drawImage(PDImage image) {
    Shape unit = new Rectangle2D.Double(0, 0, 1, 1);
    AffineTransform place =
        getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
    drawn.add(fromTop(place.createTransformedShape(unit).getBounds2D()));
  }

  @Override
  public void clip(int windingRule) {
    clipRule = windingRule;
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(x, y);
    }
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    if (path.getCurrentPoint() == null) {
      path.moveTo(x1, y1);
    }
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    if (path.getCurrentPoint() != null) {
      path.closePath();
    }
  }

  @Override
  public void endPath() {
    if (clipRule >= 0) {
      path.setWindingRule(clipRule);
      getGraphicsState().intersectClippingPath(path);
      clipRule = -1;
    }
    path = new GeneralPath();
  }

  @Override
  public void strokePath() {
    painted();
  }

  @Override
  public void fillPath(int windingRule) {
    painted();
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    painted();
  }

  private void painted() {
    drawn.add(fromTop(path.getBounds2D()));
    endPath();
  }

  @Override
  public void shadingFill(COSName shadingName) {
    // Nothing is shaded.
  }
}
