package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.drysill.ReportWishes;
import org.drysill.report.language.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What readers of the examples stumbled over. */
class SentencesTest {
  private static final Pattern SENTENCE =
      Pattern.compile(
          "(?s)<(?:p|li)(?: class=\"(?:lead|more|table-foot[^\"]*)\")?>(.*?)</(?:p|li)>");

  private static String page(String example, String edition) {
    return Rendered.example(example, ReportWishes.NONE.withEdition(edition)).report().html();
  }

  private static String sentences(String page) {
    String before = page.substring(0, page.indexOf("id=\"workings\""));
    return SENTENCE
        .matcher(before)
        .results()
        .map(found -> found.group(1).replaceAll("<[^>]*>", "").replace('\u00a0', ' '))
        .reduce("", (all, next) -> all + "\n" + next);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void whole_flows_have_no_decimals_and_dates_are_written_out(String example) {
    assertThat(sentences(page(example, "survey")))
        .contains(" l/s")
        .doesNotContainPattern("\\d\\d\\.0 (l/s|m³/h)")
        .doesNotContainPattern("\\d{4}-\\d{2}-\\d{2}");
  }

  /** The air of a home and the recovery of a unit are printed alike wherever they stand. */
  @ParameterizedTest
  @ValueSource(strings = {"survey", "record", "brief"})
  void what_is_held_against_a_limit_is_rounded_one_way(String edition) {
    String page = page("1930s-terrace", edition);
    String bare =
        page.substring(0, page.indexOf("id=\"workings\""))
            .replaceAll("<[^>]*>", "")
            .replaceAll("[\\s\\u00a0]", "");
    assertThat(bare).contains("37(20–65)").doesNotContain("38(20–65)");
    assertThat(bare).contains("54(52–57)").doesNotContain("about55%", "insteadof55%");
  }

  /** The layout library would part a number after a stop, and a colon from what it follows. */
  @Test
  void numbers_of_workings_and_colons_stay_in_one_piece() {
    assertThat(page("1930s-terrace", "survey"))
        .containsPattern("class=\"q\">\\(w\\d+\\.\\d+\\)")
        .doesNotContainPattern("[ ,]\\(w\\d+\\.\\d+\\)");
    assertThat(page("1930s-terrace", "survey") + page("1930s-terrace", "brief"))
        .doesNotContainPattern("</b>: ");
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void the_short_report_calls_measures_and_sources_by_name(Language language) {
    String page =
        Rendered.example("1930s-terrace", ReportWishes.NONE.withEdition("brief").in(language))
            .words();
    assertThat(page)
        .doesNotContain("duct-repair", "lids-and-hood", "heat-pump-dryer", "positive-input")
        .doesNotContain("first source", "ersten Quelle")
        .doesNotContainPattern("\\d m[23]\\b");
  }
}
