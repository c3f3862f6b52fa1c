package org.drysill.truth;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.drysill.survey.photo.PhotoFiles;

/**
 * Draws what stands in the place of photographs in the examples: plainly drawings, so that nobody
 * takes them for pictures of a home. The argument is the folder of the examples.
 */
public final class DrawnPhotos {
  private static final int WIDTH = 800;
  private static final int HEIGHT = 600;
  private static final Color PAPER = new Color(0xF4F1EA);
  private static final Color LINE = new Color(0x3A4148);
  private static final Color MOULD = new Color(0x55605A);
  private static final Color WATER = new Color(0x7F9DB5);

  private final BufferedImage image;
  private final Graphics2D pen;
  private final Random random;

  private DrawnPhotos(int across, int down, long seed) {
    image = new BufferedImage(across, down, BufferedImage.TYPE_INT_RGB);
    random = new Random(seed);
    pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(PAPER);
    pen.fillRect(0, 0, across, down);
    pen.setColor(LINE);
    pen.setStroke(new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
  }

  /** Writes the files of the examples. */
  public static void main(String[] arguments) throws IOException {
    Path examples = Path.of(arguments[0]);
    Path terrace = Files.createDirectories(examples.resolve("1930s-terrace/photos"));
    Files.write(terrace.resolve("kitchen-corner.jpg"), corner(140, 3));
    Files.write(terrace.resolve("front-window.jpg"), window(5));
    Files.write(terrace.resolve("behind-wardrobe.jpg"), wardrobe());
    Path flat = Files.createDirectories(examples.resolve("top-floor-flat/photos"));
    Files.write(flat.resolve("bedroom-corner.jpg"), corner(0, 7));
    Path before = Files.createDirectories(examples.resolve("top-floor-flat/before/photos"));
    Files.write(before.resolve("bedroom-corner.jpg"), corner(420, 7));
    Files.write(before.resolve("bathroom-ceiling.jpg"), ceiling());
  }

  /**
   * An outside corner between floor and ceiling, with so many spots of mould above the skirting.
   */
  private static byte[] corner(int spots, long seed) {
    DrawnPhotos drawing = new DrawnPhotos(WIDTH, HEIGHT, seed);
    drawing.line(430, 0, 430, 470);
    drawing.line(0, 560, 430, 470);
    drawing.line(430, 470, 800, 550);
    drawing.line(0, 510, 430, 425);
    drawing.line(430, 425, 800, 500);
    drawing.spots(spots, 430, 400, 110, 90, MOULD);
    return drawing.jpeg();
  }

  /** A window of two panes with water on their lower halves. */
  private static byte[] window(long seed) {
    DrawnPhotos drawing = new DrawnPhotos(WIDTH, HEIGHT, seed);
    drawing.box(110, 60, 580, 460);
    drawing.box(140, 90, 250, 400);
    drawing.box(410, 90, 250, 400);
    drawing.line(80, 535, 720, 535);
    drawing.spots(260, 265, 420, 70, 45, WATER);
    drawing.spots(260, 535, 420, 70, 45, WATER);
    drawing.pen.setColor(WATER);
    for (int x : new int[] {190, 240, 330, 460, 540, 610}) {
      drawing.line(x, 330 + x % 70, x, 488);
    }
    return drawing.jpeg();
  }

  /** Upright, and kept on its side in the file, as telephones do; the file says so. */
  private static byte[] wardrobe() {
    DrawnPhotos drawing = new DrawnPhotos(HEIGHT, WIDTH, 11);
    drawing.box(40, 120, 220, 640);
    drawing.line(150, 120, 150, 760);
    drawing.line(0, 770, 600, 770);
    drawing.line(260, 720, 600, 720);
    drawing.spots(230, 330, 560, 60, 130, MOULD);
    return PhotoFiles.withExif(drawing.onItsSide().jpeg(), 6, "a drawing");
  }

  private static byte[] ceiling() {
    DrawnPhotos drawing = new DrawnPhotos(WIDTH, HEIGHT, 13);
    drawing.line(0, 330, 400, 250);
    drawing.line(400, 250, 800, 330);
    drawing.line(400, 250, 400, 600);
    drawing.pen.draw(new Ellipse2D.Double(330, 70, 140, 60));
    drawing.spots(220, 400, 200, 170, 40, MOULD);
    return drawing.jpeg();
  }

  private DrawnPhotos onItsSide() {
    DrawnPhotos lying = new DrawnPhotos(image.getHeight(), image.getWidth(), 0);
    lying.pen.drawImage(image, new AffineTransform(0, -1, 1, 0, 0, image.getWidth()), null);
    return lying;
  }

  private void line(int x1, int y1, int x2, int y2) {
    pen.draw(new Line2D.Double(x1, y1, x2, y2));
  }

  private void box(int x, int y, int width, int height) {
    pen.draw(new Rectangle2D.Double(x, y, width, height));
  }

  private void spots(int number, int x, int y, double wide, double high, Color colour) {
    pen.setColor(colour);
    for (int i = 0; i < number; i++) {
      double size = 3 + 9 * random.nextDouble();
      pen.fill(
          new Ellipse2D.Double(
              x + wide * random.nextGaussian() / 1.6,
              y + high * random.nextGaussian() / 1.6,
              size,
              size));
    }
    pen.setColor(LINE);
  }

  private byte[] jpeg() {
    pen.dispose();
    return PhotoFiles.encoded(image, "jpeg");
  }
}
