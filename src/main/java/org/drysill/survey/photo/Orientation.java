package org.drysill.survey.photo;

import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * How a picture lies in its file: tag 0x0112 of its Exif data, 1 to 8. Of those data nothing else
 * is looked at, and nothing is kept.
 *
 * @param tag 1 for upright; 2, 4, 5 and 7 are mirrored; 5 to 8 lie on a side
 */
record Orientation(int tag) {
  /** As it is to be seen. */
  static final Orientation UPRIGHT = new Orientation(1);

  private static final int MOST = 8;
  private static final int PNG_CHUNKS = 8;
  private static final int PNG_FRAME = 12;

  /** The orientation that a file states; upright where it states none that can be read. */
  static Orientation of(byte[] file, FileKind kind) {
    Metadata metadata = new Metadata();
    try {
      switch (kind) {
        case JPEG ->
            metadata =
                JpegMetadataReader.readMetadata(
                    new ByteArrayInputStream(file), List.of(new ExifReader()));
        case PNG -> new ExifReader().extract(new ByteArrayReader(chunk(file)), metadata);
      }
    } catch (JpegProcessingException | IOException | RuntimeException unreadable) {
      return UPRIGHT;
    }
    return metadata.getDirectoriesOfType(ExifIFD0Directory.class).stream()
        .map(d -> d.getInteger(ExifDirectoryBase.TAG_ORIENTATION))
        .filter(tag -> tag != null && tag >= 1 && tag <= MOST)
        .findFirst()
        .map(Orientation::new)
        .orElse(UPRIGHT);
  }

  /** The Exif chunk of a PNG file; empty where it has none. */
  private static byte[] chunk(byte[] file) {
    ByteBuffer bytes = ByteBuffer.wrap(file);
    int at = PNG_CHUNKS;
    while (at >= 0 && at <= file.length - PNG_FRAME) {
      int length = bytes.getInt(at);
      String name = new String(file, at + 4, 4, StandardCharsets.US_ASCII);
      if (length < 0 || length > file.length - at - PNG_FRAME) {
        break;
      }
      if (name.equals("eXIf")) {
        return Arrays.copyOfRange(file, at + 8, at + 8 + length);
      }
      at += length + PNG_FRAME;
    }
    return new byte[0];
  }

  /** True where width and height change places. */
  boolean liesOnASide() {
    return tag >= 5;
  }

  /** The transform from the file to the upright picture, for a file of so many dots. */
  AffineTransform upright(double width, double height) {
    return switch (tag) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
      default -> new AffineTransform();
    };
  }
}
