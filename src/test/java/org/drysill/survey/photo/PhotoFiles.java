package org.drysill.survey.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Picture files as cameras and telephones write them, with what those put in beside the dots. */
public final class PhotoFiles {
  private static final int SOI = 2;
  private static final int APP1 = 0xE1;
  private static final int COMMENT = 0xFE;

  private PhotoFiles() {}

  /** A file of a format such as {@code jpeg}. */
  public static byte[] encoded(BufferedImage image, String format) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, bytes)) {
        throw new AssertionError("no writer for " + format);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** The JPEG file with Exif data: the orientation, and a text such as a camera's owner. */
  public static byte[] withExif(byte[] jpeg, int orientation, String text) {
    ByteArrayOutputStream segment = new ByteArrayOutputStream();
    segment.writeBytes("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    segment.writeBytes(tiff(orientation, text));
    return with(jpeg, APP1, segment.toByteArray());
  }

  /** The JPEG file with a comment. */
  public static byte[] withComment(byte[] jpeg, String comment) {
    return with(jpeg, COMMENT, comment.getBytes(StandardCharsets.UTF_8));
  }

  /** The PNG file with Exif data before its dots. */
  public static byte[] pngWithExif(byte[] png, int orientation, String text) {
    int afterHeader = 8 + 25;
    byte[] data = tiff(orientation, text);
    ByteBuffer chunk = ByteBuffer.allocate(data.length + 12);
    chunk.putInt(data.length).put("eXIf".getBytes(StandardCharsets.US_ASCII)).put(data);
    CRC32 sum = new CRC32();
    sum.update(chunk.array(), 4, data.length + 4);
    chunk.putInt((int) sum.getValue());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(png, 0, afterHeader);
    out.writeBytes(chunk.array());
    out.write(png, afterHeader, png.length - afterHeader);
    return out.toByteArray();
  }

  private static byte[] with(byte[] jpeg, int marker, byte[] content) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, SOI);
    out.write(0xFF);
    out.write(marker);
    out.write((content.length + 2) >> 8);
    out.write(content.length + 2);
    out.writeBytes(content);
    out.write(jpeg, SOI, jpeg.length - SOI);
    return out.toByteArray();
  }

  /** Two tags of a TIFF file: orientation (0x0112) and artist (0x013B), big-endian. */
  private static byte[] tiff(int orientation, String text) {
    byte[] words = (text + "\0\0\0\0\0").getBytes(StandardCharsets.US_ASCII);
    int afterTags = 8 + 2 + 2 * 12 + 4;
    ByteBuffer tiff = ByteBuffer.allocate(afterTags + words.length);
    tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    tiff.putShort((short) 2);
    tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1).putShort((short) orientation);
    tiff.putShort((short) 0);
    tiff.putShort((short) 0x013B).putShort((short) 2).putInt(words.length).putInt(afterTags);
    tiff.putInt(0).put(words);
    return tiff.array();
  }
}
