package org.drysill.survey.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.drysill.survey.check.SurveyCode;

/**
 * Makes a picture for print from the bytes of a file. Width and height are read from its header and
 * held against limits before a single dot is decoded, and dots that print would not show are not
 * kept while decoding.
 */
final class PictureReader {
  /** A telephone of 2025 takes up to 50 million in one file. */
  static final long MOST_DOTS = 60_000_000;

  /** No side may be longer, whatever the other. */
  static final int LONGEST = 30_000;

  private static final String EXPECTED = "a JPEG or PNG file";
  private static final String WHOLE = "a whole picture; open it and save it again as JPEG";
  private static final String TRUNCATED = "Truncated";

  private PictureReader() {}

  static Picture read(byte[] file) throws BadPicture {
    FileKind kind =
        FileKind.of(file)
            .orElseThrow(
                () ->
                    new BadPicture(
                        SurveyCode.PHOTO_NO_PICTURE,
                        file.length == 0 ? "an empty file" : "a file of another kind",
                        EXPECTED));
    ImageReader reader = ImageIO.getImageReadersByFormatName(kind.format()).next();
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
      // Metadata are ignored: compressed texts in them could be larger than the picture.
      reader.setInput(in, true, true);
      checkSize(reader.getWidth(0), reader.getHeight(0));
      return Development.of(decoded(reader), Orientation.of(file, kind));
    } catch (IOException | RuntimeException broken) {
      // The decoders of the platform throw several kinds of either on files that lie.
      throw damaged("a file that cannot be decoded");
    } finally {
      reader.dispose();
    }
  }

  private static void checkSize(int width, int height) throws BadPicture {
    if ((long) width * height > MOST_DOTS || Math.max(width, height) > LONGEST) {
      throw new BadPicture(
          SurveyCode.PHOTO_TOO_LARGE,
          width + " × " + height + " dots",
          "at most " + MOST_DOTS / 1_000_000 + " million dots, no side longer than " + LONGEST);
    }
  }

  private static BadPicture damaged(String found) {
    return new BadPicture(SurveyCode.PHOTO_DAMAGED, found, WHOLE);
  }

  /** At least twice as fine as print, so that averaging has something to average. */
  private static BufferedImage decoded(ImageReader reader) throws IOException, BadPicture {
    int every = Math.max(1, (int) Picture.reduction(reader.getWidth(0), reader.getHeight(0)) / 2);
    ImageReadParam param = reader.getDefaultReadParam();
    param.setSourceSubsampling(every, every, 0, 0);
    List<String> warnings = new ArrayList<>();
    reader.addIIOReadWarningListener((from, warning) -> warnings.add(warning));
    BufferedImage image = reader.read(0, param);
    if (warnings.stream().anyMatch(w -> w.startsWith(TRUNCATED))) {
      throw damaged("a file that breaks off");
    }
    return image;
  }
}
