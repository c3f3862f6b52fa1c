package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A reader who doubts the report of the terrace changes one thing of its survey and looks what
 * becomes of figures, verdicts and reasons. Texts are without spaces.
 */
class ReportFollowsSurveyTest {
  private static final Path TERRACE = Path.of("example-surveys", "1930s-terrace", "survey.yaml");
  private static final String KITCHEN_FLOW =
      "        measured_flow: {value: 11 l/s, at: 2026-01-22T10:25, instrument: hood}\n";

  @TempDir private Path folder;

  private static String terrace() {
    return read(Rendered.example("1930s-terrace"));
  }

  /** The text of the page for a screen, which has no margin notes and line ends amid a sentence. */
  private static String read(Rendered report) {
    String page = report.report().html().replaceAll("(?s)<(style|script)\\b.*?</\\1>", "");
    return Rendered.squeezed(page.replaceAll("<[^>]*>", "").replace("&#160;", " "));
  }

  /** The terrace with one part of its survey replaced. */
  private String changed(String part, String by) {
    try {
      String survey = Files.readString(TERRACE);
      assertThat(survey).containsOnlyOnce(part);
      copy("logs");
      copy("photos");
      Path file = Files.writeString(folder.resolve("survey.yaml"), survey.replace(part, by));
      Rendered report = Rendered.of(file);
      assertThat(report.outside()).isEmpty();
      return read(report);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void copy(String beside) throws IOException {
    Path to = Files.createDirectories(folder.resolve(beside));
    try (DirectoryStream<Path> files = Files.newDirectoryStream(TERRACE.resolveSibling(beside))) {
      for (Path file : files) {
        Files.copy(file, to.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }

  @Test
  void as_surveyed_the_terrace_says_what_the_changes_below_must_not_say() {
    assertThat(terrace())
        .contains("Bathroomextract,l/s9.5(9.0–10.0)")
        .contains("extract0.6")
        .contains("Kitchenextract,continuousrate5.5(5.2–5.8)6.5short")
        .contains("publishedratesforawholehome")
        .contains("31l/sareaskedbyApprovedDocumentF");
  }

  @Test
  void half_the_flow_of_a_fan_is_half_in_every_table_and_sketch() {
    String text = changed("{value: 9.5 l/s,", "{value: 4.75 l/s,");
    assertThat(text)
        .contains("Bathroomextract,l/s4.7(4.5–5.0)15short")
        .contains("extract0.3")
        .doesNotContain("extract0.6")
        .doesNotContain("9.5(9.0–10.0)");
  }

  @Test
  void without_its_measurement_a_fan_is_derated_aloud_and_its_verdict_is_open() {
    String text = changed(KITCHEN_FLOW, "");
    assertThat(text)
        .contains("Kitchenextract,continuousrate6.0(4.5–7.5)6.5nottold")
        .contains("MeasuretheflowatKitchenheat-recoveryunit")
        .contains("FlowofKitchenheat-recoveryunitasfitted0.8±0.2ofthedeclared54m³/h")
        .doesNotContain("Kitchenextract,continuousrate5.5(5.2–5.8)6.5short");
  }

  @Test
  void where_another_rule_set_governs_it_stands_first_and_counts_the_air_its_own_way() {
    String text = changed("jurisdiction: england", "jurisdiction: netherlands");
    assertThat(text)
        // Fans alone, on the first page, in the chapter and in its comparison.
        .contains("Thehomegetsabout6.0ofthe44l/sofoutdoorairbyfansthatthegoverningrulesetasksfor")
        .contains("Thehomegets6.0(5.4–6.8)l/sofoutdoorairbyfans;44l/sareasked")
        .contains("44l/sareaskedbyBouwbesluit2012,whichgovernshere")
        .contains("Kitchenextract,l/s5.5(5.2–5.8)21short")
        .doesNotContain("31l/sareasked");
  }

  @Test
  void where_readers_are_used_to_other_units_every_flow_is_in_them() {
    String text = changed("jurisdiction: england", "jurisdiction: ashrae-62-2");
    assertThat(text)
        .contains("57cfmareaskedbyANSI/ASHRAEStandard62.2,whichgovernshere")
        .contains("room,flowsincfm")
        .contains("ofoutdoorair;whetherthatreaches57cfmcannotbetold")
        .doesNotContain("room,flowsinl/s");
  }

  @Test
  void a_larger_home_is_asked_by_its_floor_area_and_leaks_more() {
    String text = changed("floor_area: 84 m2", "floor_area: 120 m2");
    assertThat(text)
        .contains("36l/sisaskedbyfloorarea")
        .contains("36l/sareaskedbyApprovedDocumentF")
        .contains("46of51l/s,comesinthroughleaksandventilators")
        .doesNotContain("31l/sisaskedbynumberofbedrooms");
  }
}
