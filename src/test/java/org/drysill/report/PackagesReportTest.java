package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Packages of measures, on the printed pages and in the results. */
class PackagesReportTest {
  private static Map<?, ?> options(Rendered report) {
    return (Map<?, ?>) ((Map<?, ?>) report.results()).get("options");
  }

  private static List<String> titles(Object steps) {
    return ((List<?>) steps).stream().map(s -> (String) ((Map<?, ?>) s).get("title")).toList();
  }

  /**
   * Whatever single measures do, page one tells what comes before all and then the works of the
   * best package, in their order and with nothing else between.
   */
  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow"})
  void the_first_page_follows_the_best_package(String example) {
    Rendered report = Rendered.example(example);
    Map<?, ?> packages = (Map<?, ?>) options(report).get("packages");
    List<?> best = (List<?>) packages.get("best");
    List<String> works = titles(((Map<?, ?>) best.get(0)).get("steps"));
    String page = report.pages().get(0);
    String steps = page.substring(page.indexOf("Whattodo,inthisorder"));
    int at = 0;
    for (String title : titles(options(report).get("first"))) {
      String begin = Rendered.squeezed(title).substring(0, 20);
      if (steps.contains(begin)) {
        assertThat(steps.indexOf(begin)).isGreaterThanOrEqualTo(at);
        at = steps.indexOf(begin);
      }
    }
    assertThat(steps).contains(Rendered.squeezed(works.get(0)));
    for (String title : works) {
      int found = steps.indexOf(Rendered.squeezed(title));
      if (found >= 0) {
        assertThat(found).as(title).isGreaterThan(at);
        at = found;
      }
    }
    for (String other : titles(options(report).get("ranked"))) {
      if (!works.contains(other)) {
        assertThat(steps).doesNotContain(Rendered.squeezed(other));
      }
    }
  }

  @Test
  void the_terrace_is_told_what_belongs_together_and_what_dry_glass_costs() {
    Rendered report = Rendered.example("1930s-terrace");
    assertThat(report.text())
        .contains(
            "Whatisbestdonetogether",
            "packages,eachmonthbymonthatlikelyvalues",
            "Thebestpackages,andthehomeoncemended",
            "PackageAintheorderoftheworks",
            "Inthecoldestmonththeroomswithcoldplacesthenhold",
            "Notcountedinmoney.",
            "Innoneofthebestpackages",
            "Whatasumofmoneybuys",
            "Whatdryglasscostsontop.",
            "Howsurethatis:casesin100",
            "Notcombined:",
            "Everymeasurebyitself")
        .doesNotContain("null", "NaN");
    assertThat(report.outside()).isEmpty();
  }

  /**
   * With three children more water is given off, and fans that the open flue keeps back are worth
   * it.
   */
  @Test
  void a_larger_household_is_told_what_is_best_once_a_spillage_test_is_passed(@TempDir Path folder)
      throws IOException {
    Rendered report = Rendered.of(terraceWithThreeChildren(folder));
    Map<?, ?> packages = (Map<?, ?>) options(report).get("packages");
    List<String> tested = titles(((Map<?, ?>) packages.get("once_tested")).get("steps"));
    assertThat(tested).anyMatch(title -> title.contains("xtract fan"));
    assertThat(report.words())
        .containsPattern(
            "Once a spillage test is passed\\. .* than A, all in all: .*A has both in \\d+ of 100"
                + " cases\\.");
  }

  private static Path terraceWithThreeChildren(Path folder) throws IOException {
    Path example = Path.of("example-surveys/1930s-terrace");
    try (Stream<Path> files = Files.walk(example)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(example.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
    Path survey = folder.resolve("survey.yaml");
    Files.writeString(survey, Files.readString(survey).replace("children: 1", "children: 3"));
    return survey;
  }

  @Test
  void the_first_page_names_the_reading_that_settles_most_and_the_chapter_all_of_them() {
    Rendered report = Rendered.example("1930s-terrace");
    List<?> next = (List<?>) options(report).get("next");
    assertThat(next).isNotEmpty().hasSizeLessThanOrEqualTo(5);
    String first = Rendered.squeezed((String) ((Map<?, ?>) next.get(0)).get("ask"));
    String page = report.pages().get(0);
    assertThat(page.substring(page.indexOf("Whatwouldchangethis"))).contains(first, "ofthedoubt");
    assertThat(report.text())
        .contains("Whattomeasurenext", "Whichreadingtakesawayhowmuchofwhichdoubt", "inputhigh");
  }

  @Test
  void a_home_that_lacks_nothing_has_measures_alone() {
    Rendered report = Rendered.example("top-floor-flat");
    assertThat(options(report).get("packages")).isNull();
    assertThat(report.text())
        .contains("Eachmeasureisstudiedbyitself", "Whattomeasurenext")
        .doesNotContain("Whatisbestdonetogether");
  }
}
