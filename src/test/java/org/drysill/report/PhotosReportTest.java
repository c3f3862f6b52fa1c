package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drysill.Drysill;
import org.drysill.report.pdf.Validator;
import org.drysill.survey.photo.PhotoFiles;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photographs in the report: numbered, captioned, pointed to, and nothing of their files kept. */
class PhotosReportTest {
  private static final String OWNER = "OWNER-OF-CAMERA";
  private static final String PLACE = "51.4778 N 0.0014 W";
  private static final Pattern DATA =
      Pattern.compile("src=\"data:image/jpeg;base64,([A-Za-z0-9+/=]+)\" alt=\"([^\"]+)\"");

  private static final String SURVEY =
      """
      drysill: 1
      visit: {date: 2026-01-22, photos: [{file: north.jpg, caption: The north side}]}
      dwelling: {floor_area: 40 m2, jurisdiction: england}
      outdoor_readings: [{at: 2026-01-22T09:00, temperature: 3 C, humidity: 85 %}]
      rooms:
        - id: living
          name: Living room
          use: living
          readings: [{at: 2026-01-22T10:00, temperature: 18 C, humidity: 70 %}]
          photos: [living.png]
          windows:
            - {id: w1, name: South window, width: 1200 mm, height: 1050 mm, glazing: single, photos: [window.jpg]}
          cold_spots:
            - id: s1
              name: North corner
              kind: external corner
              readings: [{surface: 9 C, air: 18 C, outdoor: 3 C}]
              photos: [{file: corner.jpg, caption: "Mould & <flakes>"}, window.jpg]
          fans:
            - {id: f1, name: Wall fan, kind: continuous extract, declared_flow: 10 l/s, photos: [fan.jpg]}
      """;

  @TempDir private static Path folder;

  @BeforeAll
  static void write() throws IOException {
    for (String name : new String[] {"north", "window", "corner", "fan"}) {
      byte[] jpeg = PhotoFiles.encoded(picture(name.hashCode()), "jpeg");
      Files.write(
          folder.resolve(name + ".jpg"),
          PhotoFiles.withComment(PhotoFiles.withExif(jpeg, 6, OWNER), PLACE));
    }
    Files.write(
        folder.resolve("living.png"),
        PhotoFiles.pngWithExif(PhotoFiles.encoded(picture(1), "png"), 1, OWNER));
    Files.writeString(folder.resolve("survey.yaml"), SURVEY);
  }

  private static Path survey() {
    return folder.resolve("survey.yaml");
  }

  private static BufferedImage picture(int colour) {
    BufferedImage image = new BufferedImage(900, 700, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(new Color(colour & 0xFFFFFF));
    pen.fillOval(100, 100, 600, 400);
    pen.dispose();
    return image;
  }

  @Test
  void photographs_are_numbered_captioned_and_pointed_to() {
    Rendered report = Rendered.of(survey());
    assertThat(report.text())
        .contains(
            "Fivephotographsoffiveplaces",
            "Photo1.Thehome.Thenorthside.",
            "Photo2.Livingroom.",
            "Photo3.Livingroom,southwindow;Livingroom,northcorner.",
            "Photo4.Livingroom,northcorner.Mould&<flakes>.",
            "Photo5.Livingroom,wallfan.",
            "photos2,3,4and5",
            "photos3and4",
            "OfthehomePhoto1",
            "Photo5.")
        .doesNotContain("notprinted");
    assertThat(report.outside()).isEmpty();
  }

  @Test
  void each_has_words_for_whoever_does_not_see_it() {
    Matcher pictures = DATA.matcher(Rendered.of(survey()).report().html());
    assertThat(pictures.results().map(found -> found.group(2)))
        .containsExactly(
            "The home: The north side",
            "Living room: photograph without a caption",
            "Living room, south window; Living room, north corner: photograph without a caption",
            "Living room, north corner: Mould &amp; &lt;flakes&gt;",
            "Living room, wall fan: photograph without a caption");
  }

  @Test
  void nothing_of_their_files_but_the_dots_is_in_pdf_or_html() throws IOException {
    Report report = Rendered.of(survey()).report();
    assertNothingTold(report.pdf());
    try (PDDocument document = Loader.loadPDF(report.pdf())) {
      for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
        if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSStream in) {
          try (var raw = in.createRawInputStream()) {
            assertNothingTold(raw.readAllBytes());
          }
        }
      }
    }
    assertNothingTold(report.html().getBytes(StandardCharsets.UTF_8));
    Matcher pictures = DATA.matcher(report.html());
    int seen = 0;
    while (pictures.find()) {
      assertNothingTold(Base64.getDecoder().decode(pictures.group(1)));
      seen++;
    }
    assertThat(seen).isEqualTo(5);
  }

  private static void assertNothingTold(byte[] bytes) {
    assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).doesNotContain("Exif", OWNER, PLACE);
  }

  @Test
  void the_same_files_give_the_same_report_byte_for_byte() {
    Path file = survey();
    byte[] once = Rendered.of(file).report().pdf();
    byte[] again = Drysill.report(file).report().orElseThrow().pdf();
    assertThat(once).isEqualTo(again);
  }

  @Test
  void a_report_with_photographs_keeps_what_it_claims() throws IOException, InterruptedException {
    byte[] pdf = Rendered.of(survey()).report().pdf();
    assertThat(Validator.broken(pdf, "3a", "ua1")).isEmpty();
  }
}
