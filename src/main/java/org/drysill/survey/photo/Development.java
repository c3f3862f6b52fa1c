package org.drysill.survey.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * From decoded dots to a picture for print: upright, on white where it is transparent, averaged to
 * the dots that paper shows, and written anew, so that nothing of the file but its colours is left.
 */
final class Development {
  /** Of JPEG, from 0 to 1: edges stay clean at this. */
  private static final float QUALITY = 0.82f;

  private Development() {}

  static Picture of(BufferedImage decoded, Orientation orientation) throws IOException {
    BufferedImage image = upright(decoded, orientation);
    double reduction = Picture.reduction(image.getWidth(), image.getHeight());
    int width = Math.max(1, (int) Math.round(image.getWidth() / reduction));
    int height = Math.max(1, (int) Math.round(image.getHeight() / reduction));
    // By halves, since one great step would skip dots.
    while (image.getWidth() >= 2 * width && image.getHeight() >= 2 * height) {
      image = scaled(image, image.getWidth() / 2, image.getHeight() / 2);
    }
    BufferedImage small = scaled(image, width, height);
    return new Picture(width, height, jpeg(small));
  }

  private static BufferedImage upright(BufferedImage image, Orientation orientation) {
    int width = image.getWidth();
    int height = image.getHeight();
    BufferedImage turned = orientation.liesOnASide() ? blank(height, width) : blank(width, height);
    Graphics2D graphics = turned.createGraphics();
    graphics.drawImage(image, orientation.upright(width, height), null);
    graphics.dispose();
    return turned;
  }

  private static BufferedImage scaled(BufferedImage image, int width, int height) {
    BufferedImage small = blank(width, height);
    Graphics2D graphics = small.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    graphics.drawImage(image, 0, 0, width, height, null);
    graphics.dispose();
    return small;
  }

  private static BufferedImage blank(int width, int height) {
    BufferedImage blank = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = blank.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.dispose();
    return blank;
  }

  private static byte[] jpeg(BufferedImage image) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
