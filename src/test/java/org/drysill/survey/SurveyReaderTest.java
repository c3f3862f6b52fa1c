package org.drysill.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drysill.yaml.Folder;
import org.drysill.yaml.Problem;
import org.drysill.yaml.ProblemText;
import org.drysill.yaml.RecordReader;
import org.drysill.yaml.Vocabularies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurveyReaderTest {
  private static final Path SURVEYS = Path.of("src/test/resources/surveys");
  private static final String SMALL =
      """
      drysill: 1
      visit: {date: 2026-01-22}
      dwelling: {jurisdiction: england, floor_area: 84 m2}
      rooms:
        - {id: kitchen, use: kitchen}
      """;

  @TempDir Path folder;

  private SurveyResult read(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return SurveyReader.read(Files.writeString(file, text), Vocabularies.none());
  }

  private static List<String> codes(SurveyResult result) {
    return result.problems().stream().map(p -> p.code() + " " + p.key()).toList();
  }

  @Test
  void a_survey_of_ten_minutes_reads_without_a_problem() throws IOException {
    SurveyResult result = read("survey.yaml", SMALL);
    assertThat(result.problems()).isEmpty();
    SurveyFile file = result.file().orElseThrow();
    assertThat(file.text()).isEqualTo(SMALL);
    assertThat(file.name()).endsWith("survey.yaml");
    assertThat(file.survey().dwelling().floorArea().value()).isEqualTo(84);
  }

  @Test
  void a_door_has_a_width_and_no_month_is_without_vapour() throws IOException {
    String month = ", climate: {monthly: {temperature: [%s], humidity: [%s0]}}";
    String odd =
        SMALL
            .replace("84 m2", "84 m2" + month.formatted("5, ".repeat(11) + "5", "80, ".repeat(11)))
            .replace("use: kitchen}", "use: kitchen, doors: [{to: kitchen, width: 0 mm}]}");
    assertThat(codes(read("survey.yaml", odd)))
        .contains("Y021 rooms[0].doors[0].width", "Y021 dwelling.climate.monthly.humidity[11]");
  }

  @Test
  void a_rich_survey_reads_with_its_files_and_its_earlier_survey() {
    SurveyResult result =
        SurveyReader.read(SURVEYS.resolve("everything.yaml"), Vocabularies.none());
    assertThat(result.problems()).extracting(ProblemText::of).isEmpty();
    SurveyFile file = result.file().orElseThrow();
    assertThat(file.files().keySet())
        .containsExactlyInAnyOrder(
            "photos/window.png", "photos/corner.png", "photos/kitchen.png", "my-measures.yaml");
    assertThat(file.files().get("photos/window.png")).isNotEmpty();
    assertThat(file.previous().orElseThrow().survey().visit().date()).isEqualTo("2025-02-11");
  }

  @Test
  void the_rich_survey_uses_every_key_but_the_other_ways_to_give_rules_and_climate() {
    SurveyFile file =
        SurveyReader.read(SURVEYS.resolve("everything.yaml"), Vocabularies.none())
            .file()
            .orElseThrow();
    Map<String, Boolean> used = new LinkedHashMap<>();
    mark(file.survey(), used);
    Set<String> unused = new LinkedHashSet<>();
    used.forEach(
        (key, isUsed) -> {
          if (!isUsed) {
            unused.add(key);
          }
        });
    assertThat(unused)
        .containsExactlyInAnyOrder(
            "Jurisdiction.file", "ClimateChoice.location", "ClimateChoice.file");
  }

  private static void mark(Object value, Map<String, Boolean> used) {
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(inner -> mark(inner, used));
    } else if (value instanceof List<?> list) {
      list.forEach(inner -> mark(inner, used));
    } else if (value instanceof Record record && record.getClass().getName().contains("survey")) {
      for (var component : record.getClass().getRecordComponents()) {
        Object inner = component(record, component.getName());
        boolean there =
            !(inner.equals(Optional.empty()) || inner.equals(List.of()) || inner.equals(Map.of()));
        String key = record.getClass().getSimpleName() + "." + component.getName();
        used.merge(key, there, Boolean::logicalOr);
        mark(inner, used);
      }
    }
  }

  private static Object component(Record record, String name) {
    try {
      return record.getClass().getMethod(name).invoke(record);
    } catch (ReflectiveOperationException broken) {
      throw new LinkageError(broken.getMessage(), broken);
    }
  }

  @Test
  void the_example_of_the_format_reads() throws IOException {
    String text = Files.readString(SURVEYS.resolve("format-1.yaml"));
    var reading =
        RecordReader.read(
            Survey.class, text, "format-1.yaml", Vocabularies.none(), Folder.unknown());
    assertThat(reading.problems()).extracting(ProblemText::of).isEmpty();
    assertThat(reading.value()).isPresent();
  }

  @Test
  void problems_of_form_and_of_meaning_come_in_one_run() throws IOException {
    SurveyResult result =
        read(
            "survey.yaml",
            SMALL
                    .replace("date: 2026-01-22", "date: 2026-01-22, edtion: survey")
                    .replace("use: kitchen", "use: kitchen, height: tall, doors: [{to: hal}]")
                + "  - {id: hall, use: hall}\n");
    assertThat(result.file()).isEmpty();
    assertThat(codes(result))
        .containsExactly("Y013 visit.edtion", "Y016 rooms[0].height", "S001 rooms[0].doors[0].to");
    assertThat(ProblemText.of(result.problems().get(2)))
        .contains(":5:")
        .contains("found \"hal\", expected the id of a room: kitchen, hall")
        .contains("did you mean \"hall\"?");
  }

  @Test
  void what_is_refused_is_not_called_missing_as_well() {
    Vocabularies rules = new Vocabularies(Map.of("rule set", List.of("england")));
    Path file = folder.resolve("survey.yaml");
    write(file, SMALL.replace("england", "englund"));
    SurveyResult result = SurveyReader.read(file, rules);
    assertThat(codes(result)).containsExactly("Y024 dwelling.jurisdiction");
    assertThat(result.problems().get(0).suggestion()).contains("england");
  }

  @Test
  void a_file_is_read_once_however_often_it_is_named() throws IOException {
    Files.copy(SURVEYS.resolve("photos/corner.png"), folder.resolve("p.png"));
    SurveyResult result =
        read("survey.yaml", SMALL.replace("use: kitchen", "use: kitchen, photos: [p.png, p.png]"));
    assertThat(result.file().orElseThrow().files()).containsOnlyKeys("p.png");
    assertThat(result.file().orElseThrow().pictures()).containsOnlyKeys("p.png");
  }

  @Test
  void a_missing_file_a_folder_and_a_path_out_of_the_folder_are_errors() throws IOException {
    write(folder.resolve("secret.txt"), "x");
    Files.createDirectories(folder.resolve("home/pictures"));
    write(folder.resolve("home/photo.png"), "x");
    Files.createSymbolicLink(folder.resolve("home/link.png"), folder.resolve("secret.txt"));
    SurveyResult result =
        read(
            "home/survey.yaml",
            SMALL.replace(
                "use: kitchen",
                "use: kitchen, photos: [foto.png, pictures, ../secret.txt, link.png, /etc/hosts]"));
    assertThat(codes(result))
        .containsExactly(
            "Y027 rooms[0].photos[0]",
            "Y027 rooms[0].photos[1]",
            "Y026 rooms[0].photos[2]",
            "Y026 rooms[0].photos[3]",
            "Y026 rooms[0].photos[4]");
    assertThat(result.problems().get(0).suggestion()).contains("photo.png");
  }

  @Test
  void a_file_that_is_too_large_is_an_error() throws IOException {
    try (var large = new RandomAccessFile(folder.resolve("p.png").toFile(), "rw")) {
      large.setLength(NamedBytes.MOST_BYTES + 1);
    }
    SurveyResult result =
        read("survey.yaml", SMALL.replace("use: kitchen", "use: kitchen, photos: [p.png]"));
    assertThat(codes(result)).containsExactly("S014 rooms[0].photos[0].file");
  }

  @Test
  void the_earlier_survey_may_lie_beside_the_folder_and_brings_its_own_problems()
      throws IOException {
    read("then/survey.yaml", SMALL.replace("2026-01-22", "2025-02-11").replace("84", "3000"));
    SurveyResult result = read("now/survey.yaml", previous("../then/survey.yaml"));
    assertThat(codes(result)).containsExactly("Y022 dwelling.floor_area");
    assertThat(result.problems().get(0).place().file()).endsWith("then/survey.yaml");
    assertThat(result.file().orElseThrow().warnings()).isEmpty();
    assertThat(result.file().orElseThrow().previous().orElseThrow().warnings()).hasSize(1);
  }

  @Test
  void an_earlier_survey_that_does_not_read_stops_the_later_one() throws IOException {
    read("then/survey.yaml", SMALL.replace("use: kitchen", "use: kitschen"));
    SurveyResult result = read("now/survey.yaml", previous("../then/survey.yaml"));
    assertThat(result.file()).isEmpty();
    assertThat(codes(result)).containsExactly("Y023 rooms[0].use");
  }

  @Test
  void the_earlier_survey_of_the_earlier_survey_is_not_followed() throws IOException {
    Files.createDirectories(folder.resolve("now"));
    read("then/survey.yaml", previous("../now/survey.yaml").replace("2026-01-22", "2025-02-11"));
    SurveyResult result = read("now/survey.yaml", previous("../then/survey.yaml"));
    assertThat(result.problems()).isEmpty();
    assertThat(result.file().orElseThrow().previous().orElseThrow().previous()).isEmpty();
  }

  @Test
  void an_earlier_survey_that_is_missing_absolute_later_or_this_one_is_an_error()
      throws IOException {
    read("then/survey.yaml", SMALL.replace("2026-01-22", "2027-01-01"));
    for (String written : List.of("../gone/survey.yaml", "/gone.yaml", "survey.yaml", "..")) {
      assertThat(codes(read("now/survey.yaml", previous(written))))
          .as(written)
          .containsExactly("S012 visit.previous");
    }
    assertThat(codes(read("now/survey.yaml", previous("../then/survey.yaml"))))
        .containsExactly("S013 visit.previous");
  }

  private SurveyResult readGiven(String now, String earlier) throws IOException {
    Path file = folder.resolve("now/survey.yaml");
    Files.createDirectories(file.getParent());
    return SurveyReader.read(
        Files.writeString(file, now),
        folder.resolve(earlier),
        Vocabularies.none(),
        (words, measures) -> words);
  }

  @Test
  void an_earlier_survey_that_is_given_counts_whatever_the_survey_names() throws IOException {
    read("then/survey.yaml", SMALL.replace("2026-01-22", "2025-02-11"));
    SurveyResult named = readGiven(previous("../then/survey.yaml"), "then/survey.yaml");
    assertThat(named.problems()).isEmpty();
    SurveyResult none = readGiven(SMALL, "then/survey.yaml");
    assertThat(none.problems()).isEmpty();
    assertThat(none.file().orElseThrow().previous().orElseThrow().survey().visit().date())
        .hasToString("2025-02-11");
    for (String other : List.of("../gone.yaml", "survey.yaml")) {
      SurveyResult another = readGiven(previous(other), "then/survey.yaml");
      assertThat(codes(another)).containsExactly("S039 visit.previous");
      assertThat(another.file()).isPresent();
    }
  }

  @Test
  void an_earlier_survey_that_is_given_is_read_with_its_problems() throws IOException {
    assertThat(codes(readGiven(SMALL, "gone.yaml"))).containsExactly("Y001 ");
    read("then/survey.yaml", SMALL.replace("2026-01-22", "2027-01-01"));
    assertThat(codes(readGiven(SMALL, "then/survey.yaml"))).containsExactly("S013 visit.date");
    read("then/survey.yaml", SMALL.replace("use: kitchen", "use: kitschen"));
    assertThat(codes(readGiven(SMALL.replace("84 m2", "84 m3"), "then/survey.yaml")))
        .containsExactly("Y018 dwelling.floor_area", "Y023 rooms[0].use");
  }

  @Test
  void a_survey_that_is_not_there_is_a_problem_and_no_exception() {
    SurveyResult result = SurveyReader.read(folder.resolve("no.yaml"), Vocabularies.none());
    assertThat(result.problems()).extracting(Problem::code).containsExactly("Y001");
  }

  private static String previous(String path) {
    return SMALL.replace("date: 2026-01-22", "date: 2026-01-22, previous: " + path);
  }

  private static void write(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException broken) {
      throw new AssertionError(broken);
    }
  }
}
