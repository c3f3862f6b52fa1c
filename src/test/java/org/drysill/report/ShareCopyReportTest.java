package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drysill.ReportWishes;
import org.drysill.report.pdf.Validator;
import org.drysill.survey.photo.PhotoFiles;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A copy to share holds no name of its survey, in no part of any of its files. */
class ShareCopyReportTest {
  /** Stands in every text of the survey below that a person chose. */
  private static final String SECRET = "quux";

  private static final ReportWishes SHARED = ReportWishes.NONE.shared(true);

  private static final String SURVEY =
      """
      drysill: 1
      visit:
        reference: Quux-17
        date: 2026-01-22
        surveyor: {name: Q. Quuxley, organisation: Quux Surveys, qualification: quux assessor}
        prepared_for: Quux family
        reason: Quux reason
        previous: quux-before/quux-survey.yaml
        instruments:
          - {id: quux-meter, kind: thermo-hygrometer, calibrated: 2024-10-01, temperature_accuracy: 0.4 K, humidity_accuracy: 2.5 %}
          - {id: quux-log, kind: logger}
        timeline:
          - {date: 2025-02-03, event: reported, by: Mr Quux, note: Quux said so}
          - {date: 2025-03-20, event: works completed, by: Quux Ltd, note: Quux fan}
        photos: [{file: quux-photo.jpg, caption: Quux at the door}]
        not_inspected: ["Quux loft"]
      dwelling:
        address: 17 Quux Street
        jurisdiction: england
        tenure: social rented
        floor_area: 40 m2
        climate:
          monthly:
            temperature: [4.3, 4.8, 6.6, 9.0, 11.8, 14.8, 16.6, 16.5, 14.0, 10.5, 7.1, 4.2]
            humidity: [86, 83, 80, 76, 76, 76, 76, 77, 80, 84, 87, 87]
            source: Quux station
        combustion_appliances: [{kind: gas hob, room: quux-kitchen}]
      outdoor_readings: [{at: 2026-01-22T09:00, temperature: 3 C, humidity: 85 %, instrument: quux-meter}]
      rooms:
        - id: quux-kitchen
          name: Quux's kitchen
          use: kitchen
          floor_area: 10 m2
          readings: [{at: 2026-01-22T10:00, temperature: 18 C, humidity: 70 %, instrument: quux-meter}]
          doors: [{to: quux-bedroom, undercut: 4 mm, width: 760 mm}]
          windows:
            - {id: quux-w, name: Quux window, width: 1200 mm, height: 1050 mm, glazing: single, photos: [quux-photo.jpg],
               readings: [{surface: 9 C, at_point: quux edge, instrument: quux-meter}]}
          cold_spots:
            - {id: quux-s, name: Quux corner, kind: external corner, mould_seen: specks, notes: Quux note, photos: [quux-photo.jpg],
               readings: [{surface: 9 C, air: 18 C, outdoor: 3 C, at_point: quux point, instrument: quux-meter}]}
          walls:
            - {id: quux-wall, name: Quux wall, layers: [{material: plasterboard, thickness: 12.5 mm}, {material: brick, thickness: 215 mm}]}
          moisture_sources: [{kind: cooking, note: quux stew}]
          fans:
            - id: quux-fan
              name: Quux fan
              kind: alternating heat recovery
              declared_flow: 10 l/s
              measured_flow: {value: 9 l/s, instrument: quux-meter}
              paired_with: quux-fan-2
              filter: {kind: quux filter, changed: 2025-01-01, every_months: 12}
              heat_recovery_tests: [{indoor: 20 C, outdoor: 3 C, supply: 12 C, instrument: quux-meter}]
              notes: Quux noise
          photos: [quux-photo.jpg]
          notes: Quux notes
        - id: quux-bedroom
          name: Quux and Quuxina
          use: bedroom
          floor_area: 12 m2
          logger: {file: quux-log.csv, columns: {time: Quux time, temperature: Quux temp, humidity: Quux rh}, zone: Europe/London, instrument: quux-log}
          fans: [{id: quux-fan-2, kind: alternating heat recovery, paired_with: quux-fan, declared_flow: 10 l/s}]
        - id: quux-room
          use: living
          logger: {file: quux-bad.csv, columns: {time: Quux nowhere}, instrument: quux-log}
      """;

  @TempDir private static Path folder;

  @BeforeAll
  static void write() throws IOException {
    BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
    byte[] photo = PhotoFiles.withExif(PhotoFiles.encoded(image, "jpeg"), 1, SECRET);
    Path before = Files.createDirectories(folder.resolve("quux-before"));
    for (Path home : List.of(folder, before)) {
      Files.write(home.resolve("quux-photo.jpg"), photo);
      Files.writeString(home.resolve("quux-log.csv"), log());
      Files.writeString(home.resolve("quux-bad.csv"), "Quux date,Quux value\nQuux,quux\n");
    }
    Files.writeString(folder.resolve("quux-survey.yaml"), SURVEY);
    Files.writeString(
        before.resolve("quux-survey.yaml"),
        SURVEY
            .replace("  previous: quux-before/quux-survey.yaml\n", "")
            .replace("2026-01-22", "2025-02-11"));
  }

  private static String log() {
    StringBuilder log = new StringBuilder("Quux time,Quux temp,Quux rh\n");
    for (int hour = 0; hour < 24 * 8; hour++) {
      log.append(
          String.format(
              Locale.ROOT,
              "2026-01-%02d %02d:00,%.1f,%d%n",
              12 + hour / 24,
              hour % 24,
              18 + Math.sin(hour / 4.0),
              60 + hour % 9));
    }
    return log.toString();
  }

  private static Report copy(String edition) {
    return Rendered.of(folder.resolve("quux-survey.yaml"), SHARED.withEdition(edition)).report();
  }

  @ParameterizedTest
  @ValueSource(strings = {"survey", "record", "remediation", "brief"})
  void no_name_of_the_survey_is_in_any_byte_of_the_copy(String edition) throws IOException {
    Report copy = copy(edition);
    assertSilent("results", copy.json());
    assertSilent("page", copy.html().getBytes(StandardCharsets.UTF_8));
    assertSilent("verdict", copy.verdict().getBytes(StandardCharsets.UTF_8));
    assertThat(copy.html()).doesNotContain("data:image");
    assertSilent("file", copy.pdf());
    try (PDDocument document = Loader.loadPDF(copy.pdf())) {
      assertSilent(
          "text",
          new org.apache.pdfbox.text.PDFTextStripper()
              .getText(document)
              .getBytes(StandardCharsets.UTF_8));
      List<String> attached = new ArrayList<>();
      document
          .getDocumentCatalog()
          .getNames()
          .getEmbeddedFiles()
          .getNames()
          .forEach((name, file) -> attached.add(name));
      assertThat(attached).containsExactly("results.json");
      for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
        assertSilent(document.getDocument().getObjectFromPool(key).getObject(), key.toString());
      }
    }
  }

  /** Strings of every dictionary, and every stream both packed and unpacked. */
  private static void assertSilent(COSBase object, String where) throws IOException {
    if (object instanceof COSString string) {
      assertSilent(where, string.getString().getBytes(StandardCharsets.UTF_8));
    } else if (object instanceof COSArray array) {
      for (COSBase item : array) {
        assertSilent(item, where);
      }
    } else if (object instanceof COSDictionary dictionary) {
      for (COSBase value : dictionary.getValues()) {
        assertSilent(value, where);
      }
      if (dictionary instanceof COSStream stream) {
        try (var in = stream.createInputStream()) {
          assertSilent(where, in.readAllBytes());
        }
      }
    }
  }

  private static void assertSilent(String where, byte[] bytes) {
    for (var charset : List.of(StandardCharsets.ISO_8859_1, StandardCharsets.UTF_16BE)) {
      assertThat(new String(bytes, charset).toLowerCase(Locale.ROOT).contains(SECRET))
          .as(where + " in " + charset)
          .isFalse();
    }
  }

  /** Were the scan blind, it would find nothing in the whole report either. */
  @Test
  void the_whole_report_has_the_names_that_the_copy_leaves_out() throws IOException {
    Report whole = Rendered.of(folder.resolve("quux-survey.yaml")).report();
    assertThat(new String(whole.json(), StandardCharsets.UTF_8).toLowerCase(Locale.ROOT))
        .contains(SECRET);
    assertThat(whole.html().toLowerCase(Locale.ROOT)).contains("17 quux street", "q. quuxley");
    boolean seen = false;
    try (PDDocument document = Loader.loadPDF(whole.pdf())) {
      for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
        if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSStream in) {
          try (var stream = in.createInputStream()) {
            seen |=
                new String(stream.readAllBytes(), StandardCharsets.ISO_8859_1)
                    .toLowerCase(Locale.ROOT)
                    .contains(SECRET);
          }
        }
      }
    }
    assertThat(seen).isTrue();
  }

  @Test
  void the_first_page_says_what_it_is_and_what_was_left_out() {
    Rendered copy = Rendered.of(folder.resolve("quux-survey.yaml"), SHARED.withEdition("survey"));
    assertThat(copy.pages().get(0)).contains("Acopytoshare:", "Thefiguresarethoseof");
    assertThat(copy.pages().get(1)).contains("Addressleftout", "copytoshare");
    assertThat(copy.text())
        .contains("Kitchen", "Livingroom", "Bedroom", "thermo-hygrometer-1", "thesurvey,file1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "top-floor-flat"})
  void the_figures_are_those_of_the_whole_report(String example) {
    Rendered copy = Rendered.example(example, SHARED);
    assertThat(numbers(copy.results(), new ArrayList<>()))
        .hasSizeGreaterThan(1000)
        .isEqualTo(numbers(Rendered.example(example).results(), new ArrayList<>()));
    assertThat(copy.outside()).isEmpty();
    assertThat(copy.pages().get(0))
        .contains("Whatwefound", "Whattodo,inthisorder", "Whatwouldchangethis");
  }

  private static List<Number> numbers(Object value, List<Number> found) {
    if (value instanceof Map<?, ?> map) {
      map.values().forEach(v -> numbers(v, found));
    } else if (value instanceof List<?> list) {
      list.forEach(v -> numbers(v, found));
    } else if (value instanceof Number number) {
      found.add(number);
    }
    return found;
  }

  @Test
  void a_copy_keeps_what_it_claims() throws IOException, InterruptedException {
    assertThat(Validator.broken(copy("remediation").pdf(), "3a", "ua1")).isEmpty();
  }
}
