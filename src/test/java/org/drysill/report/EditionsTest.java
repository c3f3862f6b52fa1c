package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drysill.ReportWishes;
import org.drysill.report.pdf.Validator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Three editions of one survey: other order, depth and words, the same figures. */
class EditionsTest {
  /** A printed working: name, value, what was put in. */
  /** A formula, or a value under the last one. */
  private static final Pattern WORKING =
      Pattern.compile(
          "<span class=\"formula\">(.*?)</span>"
              + "|<span class=\"working\">w[0-9.]+</span> [^<]*<b>(.*?)</b>",
          Pattern.DOTALL);

  /** Words that lay a fault at somebody's door. */
  private static final List<String> BLAMING =
      List.of(
          "at fault",
          "blame",
          "neglig",
          "neglect",
          "lifestyle",
          "failed to",
          "failure to",
          "should have",
          "ought to have",
          "careless",
          "refused",
          "liable",
          "liability",
          "culprit",
          "guilty",
          "misus",
          "unreasonabl",
          "caused by the tenant",
          "caused by the landlord",
          "responsible for what");

  /** The editions of the long report; the short one has tests of its own. */
  private static final List<String> LONG = List.of("survey", "record", "remediation");

  private static Rendered edition(String example, String edition) {
    return Rendered.example(example, ReportWishes.NONE.withEdition(edition));
  }

  private static String json(Rendered report) {
    return new String(report.report().json(), StandardCharsets.UTF_8);
  }

  private static String asked(String edition) {
    return "\n\"edition\":\"" + edition + "\",";
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void every_figure_is_the_same_in_all_editions(String example) {
    Map<String, Map<String, Set<String>>> printed = new TreeMap<>();
    for (String edition : LONG) {
      Rendered report = edition(example, edition);
      // The provenance tells the edition, so that the report can be made again.
      assertThat(json(report).replace(asked(edition), asked("survey")))
          .isEqualTo(json(edition(example, "survey")));
      assertThat(report.outside()).isEmpty();
      assertThat(report.pages().get(0)).contains("Whattodo,inthisorder", "Whatwouldchangethis");
      printed.put(edition, workings(report.report().html()));
    }
    Map<String, Set<String>> survey = printed.get("survey");
    assertThat(survey).hasSizeGreaterThan(40);
    for (String other : List.of("record", "remediation")) {
      Set<String> shared = new TreeSet<>(survey.keySet());
      shared.retainAll(printed.get(other).keySet());
      assertThat(shared).hasSizeGreaterThan(survey.size() * 9 / 10);
      for (String formula : shared) {
        Set<String> ours = survey.get(formula);
        Set<String> theirs = printed.get(other).get(formula);
        // An edition leads to what it tells: one of the two may have values that the other has not.
        assertThat(ours.containsAll(theirs) || theirs.containsAll(ours))
            .as(other + ": " + formula + " " + ours + " " + theirs)
            .isTrue();
      }
    }
  }

  /** The values by formula: names are shortened by what stands before them, values are not. */
  private static Map<String, Set<String>> workings(String html) {
    Map<String, Set<String>> values = new TreeMap<>();
    Matcher found = WORKING.matcher(html);
    String formula = "";
    while (found.find()) {
      if (found.group(1) != null) {
        formula = found.group(1);
      } else {
        values
            .computeIfAbsent(formula, name -> new TreeSet<>())
            .add(found.group(2).replaceAll("<[^>]*>", "").replaceAll(":$", ""));
      }
    }
    return values;
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void every_edition_of_every_example_breaks_no_rule_of_archive_or_access(String example)
      throws IOException, InterruptedException {
    for (String edition : ReportWishes.editions()) {
      assertThat(Validator.broken(edition(example, edition).report().pdf(), "3a", "ua1"))
          .as(edition)
          .isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void the_edition_for_the_file_lays_no_fault_at_anybodys_door(String example) {
    assertThat(edition(example, "remediation").words().toLowerCase(Locale.ROOT))
        .doesNotContain(BLAMING);
  }

  @Test
  void the_edition_for_the_file_tells_its_story_first() {
    String words = edition("top-floor-flat", "remediation").words();
    assertThat(words)
        .contains(
            "The days beside limits that did not bind yet",
            "This timeline begins on 3 February 2025, before that day",
            "10 working days",
            "Bathroom fan intermittent extract, 21 l/s declared continuous extract, 10 l/s declared",
            "Kitchen fan none continuous extract, 15 l/s declared",
            "Gaps under the doors",
            "Both visits used the same instruments",
            "comparisons are still short",
            "Works carried out by");
    assertThat(words.indexOf("Before and after on equal terms"))
        .isLessThan(words.indexOf("From here on: for whoever checks the figures"));
  }

  /** Facts, rooms, windows and fans with their filters; what follows may begin below them. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void the_facts_of_a_house_stand_on_one_page(String example) {
    List<String> pages = edition(example, "record").pages();
    List<String> with = pages.stream().filter(p -> p.contains("Housefactstokeep")).skip(1).toList();
    assertThat(with).hasSize(1);
    assertThat(with.get(0))
        .contains("Rooms,withthelastreadingofthevisit", "Fansandtheirfilters", "writedowntheday");
  }

  @Test
  void the_edition_for_an_owner_begins_with_plain_words_and_dates() {
    String words = edition("owners-bungalow", "record").words();
    assertThat(words)
        .contains(
            "This week, this winter, and when there is money",
            "due since 30 September 2024",
            "look at it in",
            "The pages up to here are for the household");
    List<String> pages = edition("owners-bungalow", "record").pages();
    int behind = 0;
    while (!pages.get(behind).contains("Fromhereon:forwhoever")) {
      behind++;
    }
    assertThat(behind).as("pages for the household").isLessThan(9);
    assertThat(edition("top-floor-flat", "record").words())
        .contains("What changed since 11 February 2025", "In between.");
  }
}
