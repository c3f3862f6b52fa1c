package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.drysill.ReportWishes;
import org.drysill.report.language.Language;
import org.drysill.report.pdf.Validator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The short report of the examples, in each of its languages. */
class BriefTest {
  private static final ReportWishes BRIEF = ReportWishes.NONE.withEdition("brief");
  private static final Pattern DIGITS = Pattern.compile("\\d+");
  private static final Pattern NUMBERS = Pattern.compile("(?s)<td class=\"n\">(.*?)</td>");

  private static Rendered brief(String example, Language language) {
    return Rendered.example(example, BRIEF.in(language));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void it_is_short_and_says_its_language(String example) throws IOException {
    for (Language language : Language.values()) {
      Rendered made = brief(example, language);
      assertThat(made.pages().size()).isBetween(7, 12);
      assertThat(made.outside()).isEmpty();
      try (PDDocument document = Loader.loadPDF(made.report().pdf())) {
        assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo(language.tag());
      }
      assertThat(made.report().html())
          .contains("<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"" + language.tag())
          .doesNotContain("id=\"wanting\"");
    }
  }

  /** The same figures as the long report; the provenance tells edition and language. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void the_results_are_those_of_the_long_report(String example) {
    for (Language language : Language.values()) {
      String json = json(brief(example, language));
      assertThat(json).contains("\"language\":\"" + language.tag() + "\"");
      assertThat(
              json.replace("\"edition\":\"brief\"", "\"edition\":\"survey\"")
                  .replace("\"language\":\"de\"", "\"language\":\"en\""))
          .isEqualTo(json(Rendered.example(example, ReportWishes.NONE.withEdition("survey"))));
    }
  }

  private static String json(Rendered report) {
    return new String(report.report().json(), StandardCharsets.UTF_8);
  }

  /** Marks and words differ, figures never do. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void tables_have_the_same_digits_in_every_language(String example) {
    List<String> german = digits(brief(example, Language.GERMAN));
    assertThat(german).hasSizeGreaterThan(100);
    assertThat(german).isEqualTo(digits(brief(example, Language.ENGLISH)));
  }

  /** Those in columns of numbers, in their order. */
  private static List<String> digits(Rendered made) {
    return NUMBERS
        .matcher(made.report().html())
        .results()
        .map(cell -> cell.group(1).replaceAll("<[^>]*>", " "))
        .flatMap(cell -> DIGITS.matcher(cell).results().map(MatchResult::group))
        .toList();
  }

  /** Every number of a working that a page names is the place of a working. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void every_mark_leads_to_a_working(String example) {
    String html = brief(example, Language.GERMAN).report().html();
    Set<String> named = found(html, "href=\"#(w[0-9.]+)\"");
    assertThat(named).hasSizeGreaterThan(20);
    assertThat(found(html, "class=\"entry\" id=\"(w[0-9.]+)\"")).containsAll(named);
  }

  private static Set<String> found(String html, String pattern) {
    return Pattern.compile(pattern)
        .matcher(html)
        .results()
        .map(m -> m.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void what_the_pages_must_hold_is_there_in_German() {
    assertThat(brief("1930s-terrace", Language.GERMAN).words())
        .contains(
            "Ob die Lüftung ausreicht, ist noch offen; 12 kalte Stellen sind gefährdet",
            "Gebäude und Ortstermin",
            "Reihenmittelhaus",
            "Räume und ihre Luft beim Ortstermin",
            "Abluft: Küche",
            "Feuchteschutz: kalte Oberflächen sind gefährdet",
            "Wärmerückgewinnung im Betrieb: geringer als angegeben",
            "Feuchtelast: rund 9,1 (4,0–16,5) kg/d Wasser",
            "Maßnahmenpaket A",
            "Ein Abluftlüfter kann Abgase in die Wohnung ziehen (Living room).",
            "Was als Nächstes zu messen ist",
            "26 Annahmen wurden getroffen",
            "Approved Document F, Volume 1: Dwellings, 2021",
            "SHA-256");
  }

  /** Terms of a sum keep their symbol once; what all of a family share stands at its formula. */
  @Test
  void workings_say_once_what_they_share() {
    assertThat(brief("1930s-terrace", Language.ENGLISH).words())
        .contains(
            "Each: measured.",
            "r = 3.5 %; τ = 20 years.",
            "i = £950; £15; £0; £450; £150",
            "Annex E (from memory)")
        .doesNotContain("i = £950; i =");
  }

  /** No comma stands before "und" in a list. */
  @Test
  void German_lists_end_as_German_does() {
    assertThat(brief("1930s-terrace", Language.GERMAN).words())
        .contains("und eine weitere Stelle")
        .doesNotContain(", und eine weitere", ", und 2 weitere");
  }

  @Test
  void a_price_that_was_taken_for_granted_has_its_currency(@TempDir Path folder)
      throws IOException {
    Path survey = folder.resolve("survey.yaml");
    try (Stream<String> lines =
        Files.lines(Path.of("example-surveys/top-floor-flat/survey.yaml"))) {
      Files.writeString(
          survey,
          lines
              .filter(line -> !line.matches("prices:.*|\\s*photos:.*|\\s*previous:.*"))
              .collect(Collectors.joining("\n", "", "\n")));
    }
    assertThat(Rendered.of(survey, BRIEF).words()).contains("Price of electricity: £0.2769/kWh");
    assertThat(Rendered.of(survey, BRIEF.in(Language.GERMAN)).words())
        .contains("Strompreis: 0,2769 £/kWh");
  }

  /** Rounded towards the failing side, as in the long report. */
  @Test
  void the_air_of_the_home_is_printed_alike_in_words_and_in_the_table_of_what_is_asked() {
    String pages = String.join("", brief("1930s-terrace", Language.ENGLISH).pages());
    assertThat(pages.split("37\\(20–65\\)", -1)).hasSizeGreaterThanOrEqualTo(5);
    assertThat(pages).doesNotContain("38(20–65)");
  }

  @Test
  void the_power_of_a_fan_is_that_of_the_long_report() {
    String power = "1.27 (1.20–1.33)";
    assertThat(brief("1930s-terrace", Language.ENGLISH).words()).contains(power);
    assertThat(Rendered.example("1930s-terrace", ReportWishes.NONE).words()).contains(power);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void it_breaks_no_rule_of_archive_or_access(String example)
      throws IOException, InterruptedException {
    for (Language language : Language.values()) {
      assertThat(Validator.broken(brief(example, language).report().pdf(), "3a", "3u", "ua1"))
          .as(language.tag())
          .isEmpty();
    }
  }
}
