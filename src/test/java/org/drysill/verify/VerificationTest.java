package org.drysill.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.drysill.ReportWishes;
import org.drysill.Reports;
import org.drysill.report.evidence.NotAReport;
import org.drysill.report.language.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reports as they were made, and reports that someone changed. */
class VerificationTest {
  private static final byte[] FLAT = report("top-floor-flat");
  private static final Optional<Path> PICTURES =
      Optional.of(Path.of("example-surveys", "top-floor-flat"));

  private static byte[] report(String example) {
    return Reports.example(example).pdf();
  }

  private static List<Statement> check(byte[] pdf) {
    return check(pdf, PICTURES);
  }

  private static List<Statement> check(byte[] pdf, Optional<Path> files) {
    try {
      return Verification.of(pdf, files).statements();
    } catch (NotAReport | IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<String> differing(List<Statement> said) {
    return said.stream()
        .filter(s -> s.state() == Statement.State.DIFFERS)
        .flatMap(s -> Stream.concat(Stream.of(s.sentence()), s.details().stream()))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void the_report_of_each_example_agrees_in_every_respect(String example) {
    List<Statement> said = check(report(example), Optional.of(Path.of("example-surveys", example)));
    assertThat(said)
        .extracting(Statement::state)
        .containsExactly(
            Statement.State.TOLD,
            Statement.State.AGREES,
            Statement.State.AGREES,
            Statement.State.AGREES,
            Statement.State.AGREES);
    assertThat(said.get(4).sentence()).contains("byte for byte");
  }

  @Test
  void a_changed_figure_is_named_with_both_values() throws IOException {
    byte[] changed =
        withFiles(
            files ->
                files.computeIfPresent(
                    "results.json",
                    (name, json) ->
                        text(json)
                            .replaceFirst(
                                "(?s)(\"ventilation\":\\{.*?\"likely\":)[0-9.]+", "$1" + 123)
                            .getBytes(StandardCharsets.UTF_8)));
    assertThat(differing(check(changed)))
        .anyMatch(
            line -> line.startsWith("ventilation.") && line.contains(".likely: 123 in the file, "))
        .anyMatch(line -> line.startsWith("results.json: the pages do not print"))
        .noneMatch(line -> line.startsWith("page "));
  }

  @Test
  void a_changed_byte_of_the_survey_is_found_in_digest_figures_and_pages() throws IOException {
    byte[] changed =
        withFiles(
            files ->
                files.computeIfPresent(
                    "survey.yaml",
                    (name, yaml) ->
                        text(yaml)
                            .replaceFirst("(?m)^  floor_area: ([0-9])", "  floor_area: 9")
                            .getBytes(StandardCharsets.UTF_8)));
    assertThat(differing(check(changed)))
        .anyMatch(line -> line.startsWith("survey.yaml: its digest is"))
        .anyMatch(line -> line.startsWith("ventilation."))
        .anyMatch(line -> line.startsWith("page "));
  }

  @Test
  void a_changed_word_on_a_page_is_found_on_that_page() throws IOException {
    byte[] changed;
    try (PDDocument document = Loader.loadPDF(FLAT)) {
      PDPage page = document.getPage(2);
      String content = new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
      PDStream stream = new PDStream(document);
      try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
        // The last words of the page are not shown any more.
        int cut = content.lastIndexOf("BT\n");
        out.write(content.substring(0, cut).getBytes(StandardCharsets.ISO_8859_1));
      }
      page.setContents(stream);
      changed = saved(document);
    }
    List<Statement> said = check(changed);
    assertThat(differing(said))
        .hasSize(2)
        .anyMatch(line -> line.startsWith("page 3: \"") && line.endsWith(" made again"));
    assertThat(said.get(3).state()).isEqualTo(Statement.State.AGREES);
  }

  @Test
  void a_file_that_was_only_saved_again_is_not_the_same_file() throws IOException {
    try (PDDocument document = Loader.loadPDF(FLAT)) {
      assertThat(differing(check(saved(document))))
          .hasSize(2)
          .anyMatch(line -> line.startsWith("first at byte"));
    }
  }

  @Test
  void a_file_that_was_taken_out_is_missed() throws IOException {
    byte[] changed = withFiles(files -> files.remove("before/survey.yaml"));
    List<Statement> said = check(changed, Optional.empty());
    assertThat(differing(said))
        .contains("before/survey.yaml: the results name it, but it is not inside");
    assertThat(said.get(said.size() - 1).state()).isEqualTo(Statement.State.NOT_COMPARED);
    assertThat(said.get(said.size() - 1).details()).containsExactly("before/survey.yaml");
  }

  @Test
  void without_its_photographs_all_but_the_pages_is_compared() {
    List<Statement> said = check(FLAT, Optional.empty());
    assertThat(said.get(3).state()).isEqualTo(Statement.State.AGREES);
    assertThat(said.get(4).state()).isEqualTo(Statement.State.NOT_COMPARED);
    assertThat(said.get(4).details()).contains("photos/bedroom-corner.jpg");
  }

  @Test
  void of_a_copy_to_share_the_digests_alone_are_compared() {
    byte[] copy =
        Reports.of(
                Path.of("example-surveys", "top-floor-flat", "survey.yaml"),
                ReportWishes.NONE.shared(true))
            .pdf();
    List<Statement> said = check(copy);
    assertThat(said.get(2).state()).isEqualTo(Statement.State.AGREES);
    assertThat(said.get(3).state()).isEqualTo(Statement.State.NOT_COMPARED);
    assertThat(said.get(3).sentence()).contains("copy to share");
  }

  @Test
  void an_edition_that_was_wished_for_is_made_again() {
    byte[] record =
        Reports.of(
                Path.of("example-surveys", "top-floor-flat", "survey.yaml"),
                ReportWishes.NONE.withEdition("record"))
            .pdf();
    assertThat(check(record).get(4).sentence()).contains("byte for byte");
  }

  @Test
  void a_language_that_was_wished_for_is_spoken_again() {
    byte[] german =
        Reports.of(
                Path.of("example-surveys", "owners-bungalow", "survey.yaml"),
                ReportWishes.NONE.withEdition("brief").in(Language.GERMAN))
            .pdf();
    assertThat(check(german).get(4).sentence()).contains("byte for byte");
  }

  @Test
  void a_missing_file_can_be_given() throws IOException, NotAReport {
    byte[] changed = withFiles(files -> files.remove("before/survey.yaml"));
    List<Statement> said =
        Verification.of(changed, Optional.of(Path.of("example-surveys", "top-floor-flat")))
            .statements();
    assertThat(said.get(3).state()).isEqualTo(Statement.State.AGREES);
  }

  @Test
  void a_file_that_was_put_in_is_not_named_by_the_results() throws IOException {
    byte[] changed = withFiles(files -> files.put("more.txt", new byte[] {1}));
    assertThat(differing(check(changed)))
        .contains("more.txt: it is inside, but the results do not name it");
  }

  @Test
  void another_version_is_said_first_and_its_pages_are_not_compared() throws IOException {
    byte[] changed =
        withFiles(
            files ->
                files.computeIfPresent(
                    "results.json",
                    (name, json) ->
                        text(json)
                            .replaceFirst("\"version\":\"[^\"]*\"", "\"version\":\"0.0.1\"")
                            .getBytes(StandardCharsets.UTF_8)));
    List<Statement> said = check(changed);
    assertThat(said.get(0).sentence())
        .startsWith("Made by Drysill 0.0.1")
        .contains("Figures may differ for that reason");
    assertThat(said.get(3).state()).isEqualTo(Statement.State.AGREES);
    assertThat(said.get(4).state()).isEqualTo(Statement.State.NOT_COMPARED);
  }

  @Test
  void a_survey_that_cannot_be_read_is_said_with_its_line() throws IOException {
    byte[] changed =
        withFiles(
            files ->
                files.put(
                    "survey.yaml", "drysill: 1\nrooms: []\n".getBytes(StandardCharsets.UTF_8)));
    assertThat(differing(check(changed)))
        .contains("The files do not make a report.")
        .anyMatch(line -> line.startsWith("line 2: found"));
  }

  @Test
  void what_is_no_report_is_refused_in_one_clause() throws IOException {
    refused("no PDF".getBytes(StandardCharsets.UTF_8), "cannot be read as a PDF");
    refused(Arrays.copyOf(FLAT, FLAT.length / 2), "cannot be read as a PDF");
    refused(withFiles(Map::clear), "has no results inside");
    refused(withFiles(f -> f.put("results.json", new byte[] {'{'})), "no JSON");
    refused(withFiles(f -> f.put("results.json", new byte[] {'{', '}'})), "provenance");
    refused(withFiles(f -> f.put("../up.yaml", new byte[1])), "leads elsewhere: ../up.yaml");
    refused(withFiles(f -> f.put("C:\\up.yaml", new byte[1])), "leads elsewhere");
    try (PDDocument document = Loader.loadPDF(FLAT)) {
      document.protect(new StandardProtectionPolicy("a", "b", new AccessPermission()));
      refused(saved(document), "encrypted");
    }
    try (PDDocument document = Loader.loadPDF(FLAT)) {
      document.protect(new StandardProtectionPolicy("a", "", new AccessPermission()));
      refused(saved(document), "encrypted");
    }
  }

  @Test
  void a_file_that_inflates_beyond_measure_is_refused_before_it_does() throws IOException {
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      PDStream stream = new PDStream(document);
      try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
        byte[] nothing = new byte[1 << 20];
        for (int i = 0; i < 600; i++) {
          out.write(nothing);
        }
      }
      document.getPage(0).setContents(stream);
      refused(saved(document), "inflates to more than 512 MB");
    }
  }

  private static void refused(byte[] pdf, String why) {
    assertThatThrownBy(() -> Verification.of(pdf, Optional.empty()))
        .isInstanceOf(NotAReport.class)
        .hasMessageContaining(why);
  }

  private interface Change {
    void change(Map<String, byte[]> files);
  }

  /** The report of the flat with other files inside. */
  private static byte[] withFiles(Change change) throws IOException {
    try (PDDocument document = Loader.loadPDF(FLAT)) {
      PDDocumentNameDictionary names = document.getDocumentCatalog().getNames();
      Map<String, byte[]> files = new LinkedHashMap<>();
      for (Map.Entry<String, PDComplexFileSpecification> one :
          names.getEmbeddedFiles().getNames().entrySet()) {
        files.put(one.getKey(), one.getValue().getEmbeddedFile().toByteArray());
      }
      change.change(files);
      Map<String, PDComplexFileSpecification> changed = new LinkedHashMap<>();
      for (Map.Entry<String, byte[]> one : files.entrySet()) {
        PDComplexFileSpecification file = new PDComplexFileSpecification();
        file.setFile(one.getKey());
        file.setEmbeddedFile(
            new PDEmbeddedFile(
                document, new ByteArrayInputStream(one.getValue()), COSName.FLATE_DECODE));
        changed.put(one.getKey(), file);
      }
      PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
      tree.setNames(changed);
      names.setEmbeddedFiles(tree);
      return saved(document);
    }
  }

  private static byte[] saved(PDDocument document) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
