package org.drysill.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drysill.Drysill;
import org.drysill.report.language.Language;
import org.drysill.report.language.Phrases;
import org.drysill.report.pdf.TextOutside;
import org.drysill.report.pdf.Validator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets of the examples, as the people who live there get them. */
class SheetTest {
  private static final Map<String, Sheet> MADE = new ConcurrentHashMap<>();

  /** Words that every English sentence has and no German one. */
  private static final Pattern ENGLISH =
      Pattern.compile("\\b(the|and|of|is|are|with|from|where)\\b", Pattern.CASE_INSENSITIVE);

  private static final Pattern DIGITS = Pattern.compile("\\d+");

  private static Path example(String name) {
    return Path.of("example-surveys", name, "survey.yaml");
  }

  private static Sheet sheet(String name, Language language) {
    return MADE.computeIfAbsent(
        name + language, key -> Drysill.sheet(example(name), language).sheet().orElseThrow());
  }

  private static String text(Sheet sheet) {
    try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      return stripper.getText(document).replace('\u00a0', ' ');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void a_sheet_is_two_pages_at_most_in_its_own_language(String name) throws IOException {
    for (Language language : Language.values()) {
      try (PDDocument document = Loader.loadPDF(sheet(name, language).pdf())) {
        assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(2);
        assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo(language.tag());
        assertThat(TextOutside.of(document)).isEmpty();
      }
    }
  }

  /** Digits come from the same results: marks and words differ, figures never do. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void the_digits_are_the_same_in_both_languages(String name) {
    assertThat(digits(rows(name, Language.GERMAN))).isEqualTo(digits(rows(name, Language.ENGLISH)));
  }

  private static String rows(String name, Language language) {
    Phrases phrases = Phrases.of(language, SheetPage.WORDS);
    String text = text(sheet(name, language));
    return text.substring(
        text.indexOf(phrases.say("standing.verdict")), text.indexOf(phrases.say("steps")));
  }

  /** A number that stands in words for one thing in one language counts in none. */
  private static List<String> digits(String text) {
    List<String> digits = new ArrayList<>();
    DIGITS.matcher(text).results().map(MatchResult::group).forEach(digits::add);
    return digits.stream().sorted().toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void no_English_is_left_but_names_that_the_survey_gives(String name) {
    String german =
        text(sheet(name, Language.GERMAN))
            .replace("The bungalow", "")
            .replace("Hall and stairs", "")
            .replaceAll("(?s)Wall behind the\\s+wardrobe", "")
            .replace("Sleeve of the heat-recovery unit", "")
            .replaceAll("(?s)North-west corner at the\\s+ceiling", "");
    assertThat(ENGLISH.matcher(german).results().map(MatchResult::group)).isEmpty();
    assertThat(german).contains("Was zu tun ist, in dieser Reihenfolge");
  }

  @Test
  void hazards_come_first_and_each_is_said_once() {
    String german = text(sheet("1930s-terrace", Language.GERMAN));
    String hazard = "Ein Abluftlüfter kann Abgase in die Wohnung ziehen.";
    String squeezed = german.replaceAll("\\s+", " ");
    assertThat(squeezed).containsOnlyOnce(hazard);
    assertThat(squeezed.indexOf(hazard)).isLessThan(squeezed.indexOf("im Jahr"));
    assertThat(squeezed).contains("Wenn ein Kohlenmonoxid-Melder anschlägt");
  }

  /** The title of a step ends before what it does begins. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void titles_of_steps_end_with_one_stop(String name) {
    for (Language language : Language.values()) {
      assertThat(sheet(name, language).html())
          .containsPattern("</em><p><b>[^<]*[^.]\\.</b> ")
          .doesNotContainPattern("</em><p><b>[^<]*([^.]|\\.\\.)</b> ");
    }
  }

  @Test
  void where_only_windows_are_at_risk_the_heading_says_so() {
    assertThat(sheet("top-floor-flat", Language.ENGLISH).html())
        .contains("Some windows in your home are too cold to stay dry");
  }

  @Test
  void the_machine_has_no_say() {
    byte[] usual = sheet("top-floor-flat", Language.GERMAN).pdf();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr"));
      assertThat(
              Drysill.sheet(example("top-floor-flat"), Language.GERMAN).sheet().orElseThrow().pdf())
          .isEqualTo(usual);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void the_page_for_a_screen_says_its_language() {
    assertThat(sheet("top-floor-flat", Language.GERMAN).html())
        .contains("lang=\"de\"")
        .contains("Luft beim Besuch");
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void the_sheets_break_no_rule_of_archive_or_access(Language language)
      throws IOException, InterruptedException {
    assertThat(Validator.broken(sheet("1930s-terrace", language).pdf(), "3a", "ua1")).isEmpty();
  }
}
