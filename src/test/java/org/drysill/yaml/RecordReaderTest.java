package org.drysill.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RecordReaderTest {
  enum Colour implements Worded {
    RED,
    DARK_BLUE
  }

  @Shorthand("text")
  record Note(@Key(about = "Text") Optional<String> text, @Key(about = "By") Optional<String> by) {}

  record Part(
      @Key(about = "Id", id = true) String id,
      @Key(about = "Parts within") List<Part> parts,
      @Key(about = "Remark") Optional<Note> note) {}

  record Thing(
      @Key(about = "Name", example = "No") String name,
      @Key(about = "How many", min = 0, max = 99) int count,
      @Key(about = "Perhaps how many") Optional<Integer> perhaps,
      @Key(about = "Share", dimension = Dimension.PERCENT, unit = "%") double share,
      @Key(about = "Flow", dimension = Dimension.AIRFLOW, unit = "l/s", min = 0, high = 50)
          Optional<Quantity> airFlow,
      @Key(about = "Colour") Optional<Colour> colour,
      @Key(about = "On") boolean on,
      @Key(about = "Day") Optional<LocalDate> day,
      @Key(about = "Moment") Optional<Moment> at,
      @Key(about = "Flow by bedrooms", dimension = Dimension.AIRFLOW, unit = "l/s")
          Map<Integer, Quantity> byBedrooms,
      @Key(about = "Labels") Map<String, String> labels,
      @Key(about = "Parts") List<Part> parts) {}

  private static final String RICH =
      """
      name: No
      count: 012
      share: 12.5
      air_flow: 54 m3/h
      colour: dark-blue
      on: no
      day: 2026-01-22
      at: 2026-01-22T9:40
      by_bedrooms: {1: 19, 2: 25 l/s}
      labels: {start: 1:30, yes: on}
      parts:
        - id: a
          note: plain words
          parts: [{id: b, note: {text: more, by: someone}}]
      """;

  private static Reading<Thing> read(String text) {
    return RecordReader.read(Thing.class, text, "thing.yaml", Vocabularies.none());
  }

  @Test
  void every_type_is_taken_from_the_text_and_not_from_yamls_guess() {
    Reading<Thing> reading = read(RICH);
    assertThat(reading.problems()).isEmpty();
    Thing thing = reading.value().orElseThrow();
    assertThat(thing.name()).isEqualTo("No");
    assertThat(thing.count()).isEqualTo(12);
    assertThat(thing.perhaps()).isEmpty();
    assertThat(thing.share()).isEqualTo(0.125);
    assertThat(thing.airFlow().orElseThrow().value()).isEqualTo(0.015);
    assertThat(thing.airFlow().orElseThrow().written()).isEqualTo("54 m3/h");
    assertThat(thing.colour()).contains(Colour.DARK_BLUE);
    assertThat(thing.on()).isFalse();
    assertThat(thing.day()).contains(LocalDate.of(2026, 1, 22));
    assertThat(thing.at().orElseThrow().time()).contains(LocalTime.of(9, 40));
    assertThat(thing.byBedrooms().keySet()).containsExactly(1, 2);
    assertThat(thing.byBedrooms().get(2).value()).isEqualTo(0.025);
    assertThat(thing.labels()).containsExactly(Map.entry("start", "1:30"), Map.entry("yes", "on"));
  }

  @Test
  void records_nest_in_themselves_and_a_scalar_may_stand_for_one_key() {
    Part part = read(RICH).value().orElseThrow().parts().get(0);
    assertThat(part.note().orElseThrow().text()).contains("plain words");
    assertThat(part.parts().get(0).note().orElseThrow().by()).contains("someone");
  }

  @Test
  void all_problems_come_in_one_run_in_the_order_of_the_file() {
    Reading<Thing> reading =
        read(
            """
            nmae: No
            count: 120
            share: a lot
            air_flow: 2 kg/day
            colour: rde
            on: perhaps
            day: 22/01/2026
            parts: [{id: a}, {id: a}]
            """);
    assertThat(reading.value()).isEmpty();
    assertThat(reading.problems())
        .extracting(
            p -> p.code() + " " + p.place().line() + ":" + p.place().column() + " " + p.key())
        .containsExactly(
            "Y013 1:1 nmae",
            "Y014 1:1 name",
            "Y021 2:8 count",
            "Y016 3:8 share",
            "Y018 4:11 air_flow",
            "Y023 5:9 colour",
            "Y023 6:5 on",
            "Y017 7:6 day",
            "Y028 8:23 parts[1].id");
    assertThat(reading.problems())
        .extracting(p -> p.suggestion().orElse(""))
        .containsExactly("name", "", "", "", "", "red", "", "2026-01-22", "");
  }

  @Test
  void an_implausible_value_is_a_warning_and_the_record_is_there() {
    Reading<Thing> reading = read(RICH.replace("54 m3/h", "70 l/s"));
    assertThat(reading.value()).isPresent();
    assertThat(reading.problems())
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.severity()).isEqualTo(Problem.Severity.WARNING);
              assertThat(p.code()).isEqualTo("Y022");
              assertThat(p.found()).isEqualTo("70 l/s");
              assertThat(p.expected()).isEqualTo("flow: at most 50 l/s, as is usual");
            });
  }

  @Test
  void places_are_found_by_path_and_fall_back_to_the_nearest_parent() {
    Places places = read(RICH).places();
    assertThat(places.of("parts[0].parts[0].note.by")).isEqualTo(new Place("thing.yaml", 14, 44));
    assertThat(places.of("parts[0].nothing.at.all")).isEqualTo(new Place("thing.yaml", 12, 5));
    assertThat(places.of("by_bedrooms.2")).isEqualTo(new Place("thing.yaml", 9, 25));
    assertThat(places.line(12)).isEqualTo("  - id: a");
    assertThat(places.line(99)).isEmpty();
  }
}
