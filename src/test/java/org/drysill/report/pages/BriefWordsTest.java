package org.drysill.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drysill.ReportWishes;
import org.drysill.Reports;
import org.drysill.report.Report;
import org.drysill.report.brief.BriefView;
import org.drysill.report.language.Language;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The short report has words for whatever a home can have, and in German no English ones. */
class BriefWordsTest {
  private static final int HOMES = 8;

  /** Letters beside figures are no word: part of a digest, or of the name of a version. */
  private static final Pattern WORD =
      Pattern.compile("(?<![\\p{L}\\p{N}])\\p{L}{3,}(?![\\p{L}\\p{N}])");

  private static final Pattern WANTING = Pattern.compile("(?s)id=\"wanting\">(.*?)</p>");

  /** Words of rule sets' titles, and of the names of files. */
  private static final Set<String> ALLOWED =
      Set.of("document", "volume", "results", "survey", "ventilation", "standard", "code");

  @TempDir private static Path folder;

  static Stream<Path> surveys() {
    return Stream.concat(
        Stream.of("1930s-terrace", "owners-bungalow", "top-floor-flat")
            .map(name -> Path.of("example-surveys", name, "survey.yaml")),
        IntStream.range(0, HOMES).mapToObj(BriefWordsTest::madeUp));
  }

  private static Path madeUp(int seed) {
    try {
      return MadeUpSurvey.write(folder, seed);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Report brief(Path survey, Language language) {
    return Reports.of(survey, ReportWishes.NONE.withEdition("brief").in(language));
  }

  @ParameterizedTest
  @MethodSource("surveys")
  void every_id_has_words(Path survey) {
    for (Language language : Language.values()) {
      assertThat(
              WANTING
                  .matcher(brief(survey, language).html())
                  .results()
                  .map(m -> m.group(1).strip()))
          .as(language.tag())
          .isEmpty();
      assertThat(brief(survey, language).html()).as("gaps").doesNotContain("{0}", "{1}", "{2}");
    }
  }

  /** Beyond names and notes of the survey, names of files, and titles and clauses of documents. */
  @ParameterizedTest
  @MethodSource("surveys")
  void no_English_word_is_left_in_German(Path survey) throws IOException {
    Report german = brief(survey, Language.GERMAN);
    Set<String> foreign = words(bundles(""));
    foreign.removeAll(words(bundles("_de")));
    foreign.removeAll(words(Files.readString(survey)));
    foreign.removeAll(ALLOWED);
    Matcher governs =
        Pattern.compile("\"rule_set\":\"([^\"]*)\"")
            .matcher(new String(german.json(), StandardCharsets.UTF_8));
    assertThat(governs.find()).isTrue();
    Set<String> left = words(withoutCitations(german.html()).replace(governs.group(1), ""));
    left.retainAll(foreign);
    assertThat(left).isEmpty();
  }

  /** The page without marks, documents where they are cited, and the list of documents. */
  private static String withoutCitations(String html) {
    return html.replaceAll("(?s)<(style|script)\\b.*?</\\1>", "")
        .replaceAll("(?s)<h2[^>]*id=\"sources\".*?(?=<h2[^>]*id=\"record\")", "")
        .replaceAll("(?s)<span class=\"quiet\">.*?</span>", "")
        .replaceAll("<[^>]*>", " ");
  }

  private static Set<String> words(String text) {
    return WORD.matcher(text)
        .results()
        .map(MatchResult::group)
        .map(word -> word.toLowerCase(Locale.ROOT))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String bundles(String suffix) {
    StringBuilder text = new StringBuilder();
    for (String bundle : List.of("language/common", "brief/words", "brief/terms")) {
      Properties words = new Properties();
      String name = "../" + bundle + suffix + ".properties";
      try (InputStream in = BriefView.class.getResourceAsStream(name);
          InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
        words.load(reader);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      words.values().forEach(phrase -> text.append(phrase).append('\n'));
    }
    return text.toString();
  }
}
