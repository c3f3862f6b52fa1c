package org.drysill.survey.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.drysill.reference.ReferenceData;
import org.drysill.survey.SurveyFile;
import org.drysill.survey.SurveyReader;
import org.drysill.survey.SurveyResult;
import org.drysill.yaml.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Photographs are made ready for print, or refused at the line that names them. */
class PicturesTest {
  private static final String SURVEY =
      """
      drysill: 1
      visit: {date: 2026-01-22}
      dwelling: {floor_area: 40 m2, jurisdiction: england}
      rooms:
        - id: living
          use: living
          photos:
            - a.jpg
            - {file: b.jpg, caption: The corner}
      """;

  @TempDir private Path folder;

  private SurveyResult read(byte[] first, byte[] second) throws IOException {
    Files.write(folder.resolve("a.jpg"), first);
    Files.write(folder.resolve("b.jpg"), second);
    Path file = Files.writeString(folder.resolve("survey.yaml"), SURVEY);
    return SurveyReader.read(file, ReferenceData.bundled().vocabularies());
  }

  private Picture picture(byte[] file) throws IOException {
    SurveyResult result = read(file, jpeg(40, 30));
    assertThat(result.problems()).isEmpty();
    return result.file().map(SurveyFile::pictures).orElseThrow().get("a.jpg");
  }

  private Problem problem(byte[] file) throws IOException {
    List<Problem> problems = read(jpeg(40, 30), file).problems();
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).place().line()).isEqualTo(9);
    assertThat(problems.get(0).found()).startsWith("\"b.jpg\", ");
    return problems.get(0);
  }

  private static byte[] jpeg(int width, int height) {
    return PhotoFiles.encoded(flag(width, height), "jpeg");
  }

  /** Red at the top left, blue at the top right, white below. */
  private static BufferedImage flag(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, width, height);
    pen.setColor(Color.RED);
    pen.fillRect(0, 0, width / 2, height / 2);
    pen.setColor(Color.BLUE);
    pen.fillRect(width / 2, 0, width - width / 2, height / 2);
    pen.dispose();
    return image;
  }

  private static BufferedImage decoded(Picture picture) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(picture.jpeg()));
  }

  private static void assertIsFlag(Picture picture, int width, int height) throws IOException {
    BufferedImage image = decoded(picture);
    assertThat(image.getWidth()).isEqualTo(width);
    assertThat(image.getHeight()).isEqualTo(height);
    assertNear(image.getRGB(width / 4, height / 4), Color.RED);
    assertNear(image.getRGB(3 * width / 4, height / 4), Color.BLUE);
    assertNear(image.getRGB(width / 4, 3 * height / 4), Color.WHITE);
    assertNear(image.getRGB(3 * width / 4, 3 * height / 4), Color.WHITE);
  }

  private static void assertNear(int rgb, Color expected) {
    Color found = new Color(rgb);
    assertThat(Math.abs(found.getRed() - expected.getRed())).isLessThan(40);
    assertThat(Math.abs(found.getGreen() - expected.getGreen())).isLessThan(40);
    assertThat(Math.abs(found.getBlue() - expected.getBlue())).isLessThan(40);
  }

  /** The flag as a camera stores it that was held so that the tag turns it back. */
  private static BufferedImage stored(int tag) {
    int width = tag >= 5 ? 160 : 120;
    int height = tag >= 5 ? 120 : 160;
    BufferedImage flag = flag(120, 160);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, flag.getRGB(xOf(tag, x, y), yOf(tag, x, y)));
      }
    }
    return image;
  }

  /** Exif 2.32, 4.6.4: the row and the column of the stored picture that are seen top and left. */
  private static int xOf(int tag, int x, int y) {
    return switch (tag) {
      case 1, 4 -> x;
      case 2, 3 -> 119 - x;
      case 5, 8 -> y;
      default -> 119 - y;
    };
  }

  private static int yOf(int tag, int x, int y) {
    return switch (tag) {
      case 1, 2 -> y;
      case 3, 4 -> 159 - y;
      case 5, 6 -> x;
      default -> 159 - x;
    };
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void a_picture_is_upright_however_the_camera_was_held(int tag) throws IOException {
    byte[] jpeg = PhotoFiles.withExif(PhotoFiles.encoded(stored(tag), "jpeg"), tag, "owner");
    assertIsFlag(picture(jpeg), 120, 160);
    byte[] png = PhotoFiles.pngWithExif(PhotoFiles.encoded(stored(tag), "png"), tag, "owner");
    assertIsFlag(picture(png), 120, 160);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9, 255})
  void an_orientation_that_is_none_is_upright(int tag) throws IOException {
    assertIsFlag(picture(PhotoFiles.withExif(jpeg(120, 160), tag, "owner")), 120, 160);
  }

  @Test
  void a_large_picture_is_made_no_finer_than_print_shows() throws IOException {
    Picture picture = picture(jpeg(4000, 3000));
    assertIsFlag(picture, 645, 484);
    assertThat(picture.widthMm()).isEqualTo(82, within(0.1));
    assertThat(picture.heightMm()).isEqualTo(61.5, within(0.2));
    Picture upright = picture(jpeg(3000, 4000));
    assertThat(upright.heightMm()).isEqualTo(64, within(0.1));
  }

  @Test
  void a_small_picture_is_not_blown_up() throws IOException {
    Picture picture = picture(jpeg(72, 36));
    assertIsFlag(picture, 72, 36);
    assertThat(picture.widthMm()).isEqualTo(25.4);
    assertThat(picture.heightMm()).isEqualTo(12.7);
  }

  @Test
  void the_same_file_gives_the_same_bytes() throws IOException {
    byte[] file = jpeg(1600, 900);
    assertThat(picture(file).jpeg()).isEqualTo(picture(file).jpeg());
  }

  @Test
  void what_is_transparent_stands_on_white() throws IOException {
    BufferedImage clear = new BufferedImage(60, 60, BufferedImage.TYPE_INT_ARGB);
    assertNear(decoded(picture(PhotoFiles.encoded(clear, "png"))).getRGB(30, 30), Color.WHITE);
  }

  @Test
  void nothing_beside_the_dots_is_kept() throws IOException {
    byte[] told =
        PhotoFiles.withComment(
            PhotoFiles.withExif(jpeg(200, 100), 3, "OWNER-OF-CAMERA"), "51.4778 N 0.0014 W");
    assertThat(text(told)).contains("Exif", "OWNER-OF-CAMERA", "51.4778");
    assertThat(text(picture(told).jpeg())).doesNotContain("Exif", "OWNER-OF-CAMERA", "51.4778");
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  @Test
  void a_file_of_another_kind_is_refused_whatever_its_name() throws IOException {
    for (byte[] file :
        List.of(
            PhotoFiles.encoded(flag(40, 30), "gif"),
            "<svg xmlns=\"http://www.w3.org/2000/svg\"/>".getBytes(StandardCharsets.UTF_8),
            new byte[] {(byte) 0xFF},
            new byte[0])) {
      Problem problem = problem(file);
      assertThat(problem.code()).isEqualTo("S040");
      assertThat(problem.expected()).isEqualTo("a JPEG or PNG file");
    }
  }

  @Test
  void a_file_that_breaks_off_is_refused() throws IOException {
    byte[] jpeg = jpeg(400, 300);
    byte[] png = PhotoFiles.encoded(flag(400, 300), "png");
    assertThat(problem(Arrays.copyOf(jpeg, jpeg.length / 2)).code()).isEqualTo("S041");
    assertThat(problem(Arrays.copyOf(jpeg, 20)).code()).isEqualTo("S041");
    assertThat(problem(Arrays.copyOf(png, png.length / 2)).code()).isEqualTo("S041");
    assertThat(problem(Arrays.copyOf(png, 12)).code()).isEqualTo("S041");
  }

  @Test
  void a_file_with_damaged_dots_or_metadata_never_ends_in_a_trace() throws IOException {
    byte[] jpeg = PhotoFiles.withExif(jpeg(400, 300), 6, "owner");
    byte[] png = PhotoFiles.pngWithExif(PhotoFiles.encoded(flag(400, 300), "png"), 6, "owner");
    Random random = new Random(4);
    for (byte[] whole : List.of(jpeg, png)) {
      for (int i = 0; i < 25; i++) {
        byte[] damaged = whole.clone();
        for (int j = 0; j < 4; j++) {
          damaged[8 + random.nextInt(damaged.length - 8)] = (byte) random.nextInt();
        }
        assertThat(read(jpeg(40, 30), damaged).problems())
            .allMatch(p -> List.of("S040", "S041", "S042").contains(p.code()));
      }
    }
  }

  /** The header says 50,000 by 50,000; were it decoded, ten gigabytes would be asked for. */
  @Test
  void a_picture_bomb_is_refused_by_its_header() throws IOException {
    byte[] png = PhotoFiles.encoded(flag(40, 30), "png");
    ByteBuffer.wrap(png).putInt(16, 50_000).putInt(20, 50_000);
    CRC32 sum = new CRC32();
    sum.update(png, 12, 17);
    ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());
    Problem problem = problem(png);
    assertThat(problem.code()).isEqualTo("S042");
    assertThat(problem.found()).endsWith("50000 × 50000 dots");
    ByteBuffer.wrap(png).putInt(16, 40_000).putInt(20, 20);
    assertThat(problem(png).code()).isEqualTo("S042");
  }

  @Test
  void a_picture_of_a_few_dots_stays_as_it_is() throws IOException {
    assertThat(picture(jpeg(400, 3)).heightMm()).isBetween(0.5, 1.0);
    assertThat(picture(jpeg(1, 1)).widthMm()).isBetween(0.3, 0.4);
  }

  @Test
  void a_missing_file_is_told_once() throws IOException {
    Files.write(folder.resolve("a.jpg"), jpeg(40, 30));
    Path file = Files.writeString(folder.resolve("survey.yaml"), SURVEY);
    List<Problem> problems =
        SurveyReader.read(file, ReferenceData.bundled().vocabularies()).problems();
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).code()).isEqualTo("Y027");
    assertThat(problems.get(0).place().line()).isEqualTo(9);
  }

  /** The transforms of the tags, against the table above, at a corner of the picture. */
  @Test
  void each_tag_moves_the_corner_where_the_table_says() {
    for (int tag = 1; tag <= 8; tag++) {
      AffineTransform turn = new Orientation(tag).upright(10, 4);
      Point2D corner = turn.transform(new Point2D.Double(0, 0), null);
      boolean right = List.of(2, 3, 6, 7).contains(tag);
      boolean low = List.of(3, 4, 7, 8).contains(tag);
      double width = tag >= 5 ? 4 : 10;
      double height = tag >= 5 ? 10 : 4;
      assertThat(corner.getX()).as("tag " + tag).isEqualTo(right ? width : 0);
      assertThat(corner.getY()).as("tag " + tag).isEqualTo(low ? height : 0);
    }
  }
}
