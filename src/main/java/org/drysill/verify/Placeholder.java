package org.drysill.verify;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** Stands for a photograph that is not at hand: no figure rests on one. */
final class Placeholder {
  private Placeholder() {}

  static byte[] picture() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB), "jpg", out);
    return out.toByteArray();
  }
}
