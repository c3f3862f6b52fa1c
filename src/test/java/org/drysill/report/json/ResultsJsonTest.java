package org.drysill.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.junit.jupiter.api.Test;

class ResultsJsonTest {
  record Sample(
      Figure required,
      Optional<Figure> dewPoint,
      Optional<String> nothing,
      Verdict verdict,
      List<String> roomsAtRisk,
      double temperatureFactor,
      Citation source) {}

  record Sections(Sample ventilation, List<ToldWorking> working) {}

  private static Figure figure(String id, Range value, Unit unit) {
    return new Figure(
        id,
        id,
        value,
        unit,
        Basis.MEASURED,
        () ->
            new Working(
                "q = max(a, b)",
                List.of(
                    Working.Input.of(
                        "a", "first", Range.exactly(0.031), Unit.AIRFLOW, Basis.PUBLISHED)),
                List.of(),
                Optional.of("a note")));
  }

  private static String json() {
    Figure required = figure("ventilation.required", new Range(0.031, 0.031, 0.033), Unit.AIRFLOW);
    Sample ventilation =
        new Sample(
            required,
            Optional.of(figure("room.dew_point", Range.exactly(9.25), Unit.CELSIUS)),
            Optional.empty(),
            Verdict.SHORT,
            List.of("kitchen"),
            0.62,
            Citation.of("A document", "2021", "Table 1", How.SEEN));
    return written(new Sections(ventilation, ToldWorking.of(List.of(required)))).replace("\n", "");
  }

  private static String written(Record results) {
    return new String(ResultsJson.of(results), StandardCharsets.UTF_8);
  }

  @Test
  void keys_carry_the_unit_and_values_are_ranges_in_it() {
    assertThat(json())
        .contains("\"required_l_s\":{\"low\":31,\"likely\":31,\"high\":33")
        .contains("\"dew_point_c\":{\"low\":9.25")
        .contains("\"temperature_factor\":0.62");
  }

  @Test
  void verdicts_are_three_words_and_absent_things_have_no_key() {
    assertThat(json()).contains("\"verdict\":\"short\"").doesNotContain("nothing");
  }

  @Test
  void the_working_follows_the_figure() {
    assertThat(json())
        .contains("\"working\":\"ventilation.required\"")
        .contains("\"formula\":\"q = max(a, b)\"")
        .contains("\"value_l_s\":{\"low\":31")
        .contains("\"note\":\"a note\"");
  }

  record Workings(List<ToldWorking> working) {}

  private static String workings(Figure... figures) {
    return written(new Workings(ToldWorking.of(List.of(figures)))).replace("\n", "");
  }

  private static Figure twice(Working.Input input) {
    return new Figure(
        "twice",
        "twice as much",
        Range.exactly(0.062),
        Unit.AIRFLOW,
        Basis.CALCULATED,
        () -> new Working("Q = 2 q", List.of(input), List.of(), Optional.empty()));
  }

  @Test
  void a_working_does_not_point_at_itself() {
    assertThat(workings(figure("once", Range.exactly(0.031), Unit.AIRFLOW)))
        .contains("\"result_l_s\":{\"low\":31,\"likely\":31,\"high\":31,\"basis\":\"measured\"}");
  }

  /** What an input is stands where its own working is, and only there. */
  @Test
  void an_input_with_a_working_in_the_list_is_told_there() {
    Figure once = figure("once", Range.exactly(0.031), Unit.AIRFLOW);
    assertThat(workings(once, twice(Working.Input.of("q", once))))
        .contains("\"inputs\":[{\"symbol\":\"q\",\"working\":\"once\"}]");
  }

  @Test
  void an_input_keeps_its_words_where_its_working_is_not_told_or_has_others() {
    Figure once = figure("once", Range.exactly(0.031), Unit.AIRFLOW);
    Figure other = figure("once", Range.exactly(0.032), Unit.AIRFLOW);
    String whole =
        "[{\"symbol\":\"q\",\"name\":\"once\",\"value_l_s\":{\"low\":31,\"likely\":31,\"high\":31},"
            + "\"basis\":\"measured\"";
    assertThat(workings(twice(Working.Input.of("q", once)))).contains(whole + "}]");
    assertThat(workings(other, twice(Working.Input.of("q", once))))
        .contains(whole + ",\"working\":\"once\"}]");
  }

  record Numbers(double a, double b, double c, double d) {}

  @Test
  void numbers_have_five_digits_and_all_whole_ones() {
    assertThat(written(new Numbers(1.0 / 3, 1_234_567.8, -98_765.44, 250)))
        .contains("\"a\":0.33333,", "\"b\":1234568,", "\"c\":-98765,", "\"d\":250\n");
  }

  @Test
  void a_source_is_one_line_with_how_it_is_known() {
    assertThat(json()).contains("\"A document, 2021, Table 1 (seen)\"");
  }

  record A(B a, List<String> working) {}

  record B(List<C> b) {}

  record C(List<Integer> c) {}

  /** Sections, their parts and what these list stand on lines of their own, and nothing deeper. */
  @Test
  void lines_are_broken_down_to_the_third_level() {
    assertThat(written(new A(new B(List.of(new C(List.of(1, 2)))), List.of())))
        .isEqualTo("{\n\"a\":{\n\"b\":[\n{\"c\":[1,2]}\n]\n},\n\"working\":[]\n}");
  }

  record Outer(@Beside B many, String name) {}

  @Test
  void what_stands_beside_has_no_key_of_its_own() {
    assertThat(written(new Outer(new B(List.of()), "n")))
        .isEqualTo("{\n\"b\":[],\n\"name\":\"n\"\n}");
  }

  @Test
  void components_become_snake_case() {
    assertThat(ResultKey.snake("roomsAtRisk")).isEqualTo("rooms_at_risk");
    assertThat(ResultKey.snake("co2")).isEqualTo("co2");
  }
}
