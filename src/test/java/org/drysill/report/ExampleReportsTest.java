package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drysill.report.pdf.Validator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The reports of the example surveys, read as their readers do. */
class ExampleReportsTest {
  private static final String NUMBER = "([−0-9.,]+)";

  /** A row of the verdict box: label, found with its range, asked, verdict; a note may follow. */
  private static final Pattern ROW =
      Pattern.compile(
          "(.+?),? "
              + NUMBER
              + "(?: ?\\("
              + NUMBER
              + "(?:–| to )"
              + NUMBER
              + "\\))? "
              + NUMBER
              + " (meets|short|not told)");

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void every_figure_of_the_verdict_box_equals_the_results(String example) {
    Rendered report = Rendered.example(example);
    List<Map<?, ?>> findings = findings(report.results(), new ArrayList<>());
    List<Matcher> rows =
        report.first().stream().map(ROW::matcher).filter(Matcher::lookingAt).toList();
    assertThat(rows).hasSizeGreaterThanOrEqualTo(5);
    for (Matcher row : rows) {
      assertThat(findings.stream().filter(f -> named(f, row.group(1))))
          .as(row.group())
          .anyMatch(f -> agrees(f, row));
    }
  }

  /** Whether a label is the name of a finding with its unit, or the first line of both. */
  private static boolean named(Map<?, ?> finding, String label) {
    String subject = (String) finding.get("subject");
    return subject.startsWith(label) || label.startsWith(subject + ",");
  }

  private static boolean agrees(Map<?, ?> finding, Matcher row) {
    Map<?, ?> provided = range(finding, "provided");
    Map<?, ?> required = range(finding, "required");
    String verdict = (String) finding.get("verdict");
    return near(row.group(2), number(provided, "likely"))
        && near(row.group(5), number(required, "likely"))
        && (row.group(3) == null
            || (near(row.group(3), number(provided, "low"))
                && near(row.group(4), number(provided, "high"))))
        && row.group(6).equals("unknown".equals(verdict) ? "not told" : verdict);
  }

  /**
   * Within one unit of the last printed place, since compared values are rounded to the failing
   * side; ratios may be printed in percent.
   */
  private static boolean near(String printed, double value) {
    BigDecimal shown = new BigDecimal(printed.replace("−", "-").replace(",", ""));
    double place = Math.pow(10, -shown.scale());
    return Math.abs(shown.doubleValue() - value) < place
        || (value < 1 && Math.abs(shown.doubleValue() - 100 * value) < place);
  }

  private static Map<?, ?> range(Map<?, ?> finding, String start) {
    return finding.entrySet().stream()
        .filter(e -> ((String) e.getKey()).startsWith(start))
        .map(e -> (Map<?, ?>) e.getValue())
        .findFirst()
        .orElseThrow();
  }

  private static double number(Map<?, ?> range, String key) {
    return ((Number) range.get(key)).doubleValue();
  }

  private static List<Map<?, ?>> findings(Object value, List<Map<?, ?>> found) {
    if (value instanceof Map<?, ?> map) {
      if (map.containsKey("verdict") && map.containsKey("subject") && map.containsKey("id")) {
        found.add(map);
      }
      // What a measure would bring has findings of the same names.
      map.entrySet().stream()
          .filter(e -> !"options".equals(e.getKey()))
          .forEach(e -> findings(e.getValue(), found));
    } else if (value instanceof List<?> list) {
      list.forEach(v -> findings(v, found));
    }
    return found;
  }

  /** Whoever redoes a figure must know which number stands for which letter. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void every_number_put_into_a_formula_has_its_symbol(String example) {
    Map<?, ?> results = (Map<?, ?>) Rendered.example(example).results();
    List<Map<?, ?>> inputs = new ArrayList<>();
    for (Object working : (List<?>) results.get("working")) {
      if (((Map<?, ?>) working).get("inputs") instanceof List<?> all) {
        all.forEach(input -> inputs.add((Map<?, ?>) input));
      }
    }
    assertThat(inputs).hasSizeGreaterThan(200).noneMatch(i -> "".equals(i.get("symbol")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void the_first_page_speaks_to_people_and_not_to_whoever_writes_the_file(String example) {
    assertThat(String.join(" ", Rendered.example(example).first()))
        .doesNotContain("measured_flow", "boost_flow", "basis: measured", "mm2");
  }

  @ParameterizedTest
  @CsvSource({"1930s-terrace, 30, 68", "owners-bungalow, 25, 60", "top-floor-flat, 25, 60"})
  void no_report_is_thin_or_swollen_and_no_page_is_empty(String example, int least, int most) {
    Rendered report = Rendered.example(example);
    int pages = report.pages().size();
    assertThat(pages).isBetween(least, most);
    // The last page holds whatever is left of the survey.
    assertThat(report.pages().subList(0, pages - 1)).allMatch(p -> p.length() > 150);
    for (int page = 1; page <= pages; page++) {
      assertThat(report.pages().get(page - 1)).contains(page + "of" + pages);
    }
    assertThat(report.outside()).isEmpty();
  }

  /** The flat's ranking holds two kinds of new windows and four ways to dry the washing. */
  @Test
  void works_are_told_once_and_not_with_their_alternatives() {
    Map<?, ?> options =
        (Map<?, ?>) ((Map<?, ?>) Rendered.example("top-floor-flat").results()).get("options");
    List<?> ranked =
        ((List<?>) options.get("ranked")).stream().map(m -> ((Map<?, ?>) m).get("id")).toList();
    List<?> order = (List<?>) options.get("order");
    assertThat(ranked.containsAll(List.of("double-glazing", "triple-glazing"))).isTrue();
    assertThat(order.contains("triple-glazing")).isTrue();
    assertThat(order.contains("double-glazing")).isFalse();
    // Panes that new windows have dried need no dryer as well.
    assertThat(order.stream().map(Object::toString)).noneMatch(id -> id.contains("dryer"));
    assertThat(Rendered.example("top-floor-flat").pages().get(0)).doesNotContain("coateddouble");
  }

  /** All that the comparison of rule sets has to say is two pages long, wherever it begins. */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void rule_sets_are_compared_on_two_pages(String example) {
    List<String> pages = Rendered.example(example).pages();
    int first = pageWith(pages, "publishedratesforawholehome");
    assertThat(String.join("", pages.subList(first, first + 3)))
        .contains("Whateachrulesetasksofthewholehome", "Heldagainst");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void the_first_page_holds_the_whole_verdict(String example) {
    assertThat(Rendered.example(example).pages().get(0))
        .contains("Whatwefound", "Whattodo,inthisorder", "Whatwouldchangethis");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void what_every_report_must_hold_is_there(String example) {
    assertThat(Rendered.example(example).text())
        .contains(
            "Contents",
            "Cautionsandlocalcode",
            "Rulesetssidebyside",
            "Howeachfigurecameabout",
            "takenforgranted",
            "Wherethepublishedfiguresstand",
            "SHA-256")
        .doesNotContain("compliant", "Optional[", "null");
  }

  /** From its heading to its last words. */
  @Test
  void before_and_after_of_the_flat_stands_on_two_pages_in_neutral_words() {
    List<String> pages = Rendered.example("top-floor-flat").pages();
    int first = pageWith(pages, "Theairindoorsgotdrier,againstoutdoorair");
    assertThat(pages.get(first))
        .contains("Whatmovedtherelativehumidityofthehome", "Beforeandafteronequalterms");
    int last = pageWith(pages, "Whattwovisitscanshow");
    assertThat(last).isLessThanOrEqualTo(first + 1);
    assertThat(pages.get(last)).contains("Thatachangeisshowndoesnotsaywhatcausedit");
    assertThat(pages.get(first) + pages.get(last))
        .doesNotContainIgnoringCase("fault")
        .doesNotContainIgnoringCase("blame")
        .doesNotContainIgnoringCase("lifestyle");
  }

  private static int pageWith(List<String> pages, String words) {
    for (int page = 2; page < pages.size(); page++) {
      if (pages.get(page).contains(words)) {
        return page;
      }
    }
    throw new AssertionError("no page has " + words);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void the_examples_break_no_rule_of_archive_or_access(String example)
      throws IOException, InterruptedException {
    byte[] pdf = Rendered.example(example).report().pdf();
    assertThat(Validator.broken(pdf, "3a", "3u", "ua1")).isEmpty();
  }

  /** A chapter of three pages: means, charts, air, events, and what is odd about the files. */
  @Test
  void the_terrace_tells_what_its_loggers_recorded() {
    String text = Rendered.example("1930s-terrace").text();
    assertThat(text)
        .contains(
            "Whattheloggersrecorded",
            "Over31daysthefrontbedroomheld",
            "topofclass3",
            "onatypicalday",
            "26of40fallscount",
            "showersorbaths",
            "inline2902",
            "theoutdoorlog")
        .doesNotContain("notevaluated");
  }
}
