package org.drysill.survey.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.drysill.survey.Survey;
import org.drysill.yaml.Problem;
import org.drysill.yaml.ProblemText;
import org.drysill.yaml.Reading;
import org.drysill.yaml.RecordReader;
import org.drysill.yaml.Vocabularies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurveyChecksTest {
  private static final Path CONSISTENT = Path.of("src/test/resources/surveys/consistent.yaml");

  private static final Vocabularies THIN =
      new Vocabularies(Map.of("material of any thickness", List.of("foil", "cavity")));

  private static List<Problem> problems(String text) {
    Reading<Survey> reading =
        RecordReader.read(Survey.class, text, "survey.yaml", Vocabularies.none());
    assertThat(reading.problems()).extracting(ProblemText::of).isEmpty();
    return SurveyChecks.of(reading.value().orElseThrow(), reading.places(), THIN, List.of());
  }

  @Test
  void a_survey_that_agrees_with_itself_has_no_problem() throws IOException {
    assertThat(problems(Files.readString(CONSISTENT))).extracting(ProblemText::of).isEmpty();
  }

  @ParameterizedTest(name = "{2}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "room: kitchen | room: kitchin | S001 dwelling.combustion_appliances[0].room",
        "to: bedroom | to: bedrom | S001 rooms[0].doors[0].to",
        "to: bedroom | to: kitchen | S002 rooms[0].doors[0].to",
        "measured_flow: 0 l/s | paired_with: f9 | S003 rooms[1].fans[1].paired_with",
        ", paired_with: f1 | `` | S004 rooms[0].fans[0].paired_with",
        "{id: ir1, kind: s | {id: ir2, kind: s | S005 rooms[0].windows[0].readings[0].instrument",
        "3.2 C, instrument: th1 | 3.2 C, instrument: th2 | S005 outdoor_readings[0].instrument",
        "{id: ir1, kind | {id: th1, kind: logger}, {id: ir1, kind | S006 visit.instruments[1].id",
        "climate: uk-midlands | climate: {} | S007 dwelling.climate",
        "jurisdiction: england | jurisdiction: {rules: a, file: b.yaml} | S007 dwelling.jurisdiction",
        "17 m2 | 32 m2 | S008 dwelling.floor_area",
        "width: 550 mm | width: 5500 mm | S009 rooms[0].windows[0].opening.width",
        "height: 1000 mm | height: 1100 mm | S009 rooms[0].windows[0].opening.height",
        "mould_seen: specks | mould_seen: none | S011 rooms[0].cold_spots[0].mould_area",
        "        hours_per_day: 20 h | `` | S016 rooms[0].fans[0].run",
        "mould_seen: specks | temperature_factor: 0.6 | S017 rooms[0].cold_spots[0].temperature_factor",
        "11.4 C | 21.4 C | S018 rooms[0].cold_spots[0].readings[0].surface",
        "8.9 C | 24 C | S018 rooms[0].windows[0].readings[0].surface",
        "11.4 C | 1.4 C | S019 rooms[0].cold_spots[0].readings[0].surface",
        "outdoor: 3 C | outdoor: 23 C | S020 rooms[0].fans[0].heat_recovery_tests[0].outdoor",
        "supply: 12.2 C | supply: 22.2 C | S021 rooms[0].fans[0].heat_recovery_tests[0].supply",
        "at: 2026-01-22T10:10 | at: 2026-02-22T10:10 | S022 rooms[0].windows[0].readings[0].at",
        "at: 2026-01-22} | at: 2025-01-22} | S022 rooms[0].fans[0].measured_flow.at",
        "2025-02-11, event | 2025-01-11, event | S023 visit.timeline[1].date",
        "2025-02-11, event | 2027-01-23, event | S044 visit.timeline[1].date",
        "currency: GBP, | currency: GBP, date: 2028-01-01, | S044 prices.date",
        "hours_per_day: 20 h | `hours_per_day: 20 h\n        filter: {changed: 2062-01-05}` | S044 rooms[0].fans[0].filter.changed",
        "calibrated: 2025-10-01 | calibrated: 2026-10-01 | S024 visit.instruments[0].calibrated",
        "calibrated: 2025-10-01 | calibrated: 2024-10-01 | S025 visit.instruments[0].calibrated",
        "declared_flow: 54 m3/h | declared_flow: 54 l/h | S026 rooms[0].fans[0].measured_flow",
        "measured_flow: 0 l/s | measured_flow: 5 l/s | S027 rooms[1].fans[1].measured_flow",
        "        readings: [{at: 2026-01-22T10:10, surface: 8.9 C, instrument: ir1}] | `` | S028 rooms[0].windows[0].condensation_seen",
        "17 m2 | 24 m2 | S029 dwelling.floor_area",
        "17 m2 | 2 m2 | S030 dwelling.floor_area",
        "bedrooms: 1 | bedrooms: 0 | S031 dwelling.bedrooms",
        "0.27 GBP/kWh | 0.27 EUR/kWh | S032 prices.electricity",
        "4000 GBP | 4000 EUR | S032 options.budget",
        "hours_per_day: 20 h | `hours_per_day: 20 h\n        fan_curve: [{flow: 0, pressure: 40}]` | S034 rooms[0].fans[0].fan_curve",
        "hours_per_day: 20 h | `hours_per_day: 20 h\n        fan_curve: [{flow: 9, pressure: 40}, {flow: 9, pressure: 4}]` | S034 rooms[0].fans[0].fan_curve[1].flow",
        "hours_per_day: 20 h | `hours_per_day: 20 h\n        fan_curve: [{flow: 0, pressure: 40}, {flow: 9, pressure: 41}]` | S034 rooms[0].fans[0].fan_curve[1].pressure",
        "hours_per_day: 20 h | `hours_per_day: 20 h\n        half_cycle: 25 s\n        switching_pause: 25 s` | S035 rooms[0].fans[0].switching_pause",
        "300..500 | 300..500 EUR | S032 options.prices.extract fan",
        "brick, thickness: 215 mm | brick | S033 rooms[1].walls[0].layers[1].thickness",
        "brick, thickness: 215 mm | brick, thickness: 0 mm | S033 rooms[1].walls[0].layers[1].thickness",
        "material: foil | `material: foil, vapour_factor: 9` | S033 rooms[1].walls[0].layers[2].thickness",
        "material: foil | `material: foil, conductivity: 200 W/mK` | S033 rooms[1].walls[0].layers[2].thickness",
        "brick, thickness: 215 mm | `brick, thickness: 215 mm, vapour_factor: 10, sd: 2 m` | S007 rooms[1].walls[0].layers[1].sd",
      })
  void one_change_gives_one_problem_at_its_place(String was, String becomes, String expected)
      throws IOException {
    String text = Files.readString(CONSISTENT);
    assertThat(text).contains(was);
    List<Problem> problems = problems(text.replace(was, becomes));
    assertThat(problems).extracting(p -> p.code() + " " + p.key()).containsExactly(expected);
    assertThat(problems.get(0).place().line()).isGreaterThan(1);
  }

  @Test
  void a_ventilator_is_not_larger_than_its_window() {
    String text =
        """
        drysill: 1
        visit: {date: 2026-01-22}
        dwelling: {jurisdiction: england, floor_area: 40 m2}
        rooms:
          - id: a
            use: living
            windows: [{id: w, width: 200 mm, height: 200 mm, background_ventilator: 50000 mm2}]
        """;
    Reading<Survey> reading =
        RecordReader.read(Survey.class, text, "survey.yaml", Vocabularies.none());
    assertThat(SurveyChecks.of(reading.value().orElseThrow(), reading.places(), THIN, List.of()))
        .extracting(p -> p.code() + " " + p.key())
        .containsExactly("S010 rooms[0].windows[0].background_ventilator");
  }
}
