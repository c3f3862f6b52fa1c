package org.drysill.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drysill.Drysill;
import org.drysill.ReportWishes;
import org.drysill.report.Report;
import org.drysill.report.brief.BriefView;
import org.drysill.report.json.JsonTree;
import org.drysill.report.language.Language;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The short report has words for whatever a home can have, and in German no English ones. */
class BriefWordsTest {
  private static final int HOMES = 20;
  private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");
  private static final Pattern WANTING = Pattern.compile("(?s)id=\"wanting\">(.*?)</p>");

  /**
   * English words that German pages may have: names of the program and its command, and what is
   * spelled alike but stands in no German phrase.
   */
  private static final Set<String> ALLOWED = Set.of("drysill", "verify");

  @TempDir private static Path folder;
  private static final Map<String, Report> MADE = new ConcurrentHashMap<>();

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
    return MADE.computeIfAbsent(
        survey + " " + language,
        key ->
            Drysill.report(
                    survey, ReportWishes.NONE.withEdition("brief").in(language), stage -> {})
                .report()
                .orElseThrow());
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
    }
  }

  /** Beyond names and notes of the survey, and titles and clauses of documents. */
  @ParameterizedTest
  @MethodSource("surveys")
  void no_English_word_is_left_in_German(Path survey) throws IOException {
    Report german = brief(survey, Language.GERMAN);
    Set<String> foreign = words(bundles(""));
    foreign.removeAll(words(bundles("_de")));
    foreign.removeAll(words(Files.readString(survey)));
    foreign.removeAll(words(cited(JsonTree.read(german.json()), new ArrayList<>())));
    foreign.removeAll(ALLOWED);
    Set<String> left = words(text(german.pdf()));
    left.retainAll(foreign);
    assertThat(left).isEmpty();
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

  /** Titles and clauses of documents, names of rule sets and climates, wherever they stand. */
  private static String cited(Object results, List<String> texts) {
    if (results instanceof Map<?, ?> map) {
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        boolean title =
            Set.of("document", "edition", "clause", "source", "sources", "rule_set")
                .contains(entry.getKey());
        if (title) {
          texts.add(String.valueOf(entry.getValue()));
        }
        cited(entry.getValue(), texts);
      }
    } else if (results instanceof List<?> list) {
      list.forEach(part -> cited(part, texts));
    }
    return String.join("\n", texts);
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }
}
