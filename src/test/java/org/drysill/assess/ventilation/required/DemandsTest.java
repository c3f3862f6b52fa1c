package org.drysill.assess.ventilation.required;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.rules.RoomGroup;
import org.drysill.reference.rules.Term;
import org.drysill.yaml.ProblemText;
import org.drysill.yaml.Reading;
import org.drysill.yaml.RecordReader;
import org.drysill.yaml.Vocabularies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Terms of rule sets, each by hand. The values are invented. */
class DemandsTest {
  private static final String SOURCE = ", source: {document: D, how: seen}";
  private static final RuleFacts HOME = facts(100, 2, 3, 4, false);

  private static RuleFacts facts(
      double floor, int storeys, int bedrooms, double people, boolean oneRoom) {
    return new RuleFacts(
        Range.exactly(floor),
        Range.exactly(240),
        storeys,
        bedrooms,
        Range.exactly(people),
        Range.exactly(0.5),
        Optional.of(Range.exactly(0.4)),
        oneRoom,
        Optional.of(4),
        Optional.of(
            List.of(
                room(RoomGroup.LIVING, 20),
                room(RoomGroup.BEDROOM, 8),
                room(RoomGroup.KITCHEN, 10),
                room(RoomGroup.BATHROOM, 5))));
  }

  private static RuleFacts.Room room(RoomGroup group, double area) {
    return new RuleFacts.Room(group, Range.exactly(area));
  }

  private static Term term(String yaml) {
    Reading<Term> reading =
        RecordReader.read(Term.class, "{" + yaml + "}", "term.yaml", Vocabularies.none());
    return reading
        .value()
        .orElseThrow(
            () ->
                new AssertionError(
                    String.join("\n", reading.problems().stream().map(ProblemText::of).toList())));
  }

  private static double litres(String yaml, RuleFacts facts) {
    return Demands.of(term(yaml), facts).rate().orElseThrow().likely() * 1000;
  }

  private static double litres(String yaml) {
    return litres(yaml, HOME);
  }

  private static String fixed(String keys) {
    return "{" + keys + SOURCE + "}";
  }

  @ParameterizedTest
  @CsvSource({"0, 10", "1, 10", "2, 20", "3, 20", "4, 35", "5, 40", "7, 50"})
  void bedrooms_are_read_in_a_table_and_past_it(int bedrooms, double expected) {
    String table =
        "by_bedrooms: {steps: [{count: 1, rate: 10 l/s}, {count: 2, rate: 20 l/s}, {count: 4,"
            + " rate: 35 l/s}], per_further: 5 l/s}"
            + SOURCE;
    assertThat(litres(table, facts(100, 2, bedrooms, 4, false))).isCloseTo(expected, within(1e-9));
    assertThat(litres(table.replace(", per_further: 5 l/s", ""), facts(100, 2, bedrooms, 4, false)))
        .isCloseTo(Math.min(expected, 35), within(1e-9));
  }

  /** A row holds for homes larger than its floor area; a home as large stands in the row before. */
  @ParameterizedTest
  @CsvSource({"50, 1, 10", "100, 1, 10", "100.1, 1, 30", "100.1, 2, 40", "500, 9, 40", "50, 0, 10"})
  void floor_and_bedrooms_are_read_in_one_table(double floor, int bedrooms, double expected) {
    String steps = "steps: [{count: 1, rate: %s l/s}, {count: 2, rate: %s l/s}]";
    String table =
        "by_floor_and_bedrooms: {rows: [{above: 0 m2, "
            + steps.formatted(10, 20)
            + "}, {above: 100 m2, "
            + steps.formatted(30, 40)
            + "}]}"
            + SOURCE;
    assertThat(litres(table, facts(floor, 2, bedrooms, 4, false)))
        .isCloseTo(expected, within(1e-9));
    Demand span =
        Demands.of(
            term(table),
            new RuleFacts(
                new Range(90, 100, 110),
                Range.exactly(1),
                1,
                1,
                Range.exactly(1),
                Range.exactly(0),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty()));
    assertThat(span.rate()).hasValue(new Range(0.010, 0.010, 0.030));
  }

  @ParameterizedTest
  @CsvSource({"occupants, 28", "bedrooms plus one, 42", "design occupancy, 42"})
  void people_are_counted_as_the_rule_says(String counted, double expected) {
    String term = "per_person: {rate: 7 l/s, counted: %s}".formatted(counted) + SOURCE;
    assertThat(litres(term, facts(100, 2, 5, 4, false))).isCloseTo(expected, within(1e-9));
  }

  @Test
  void the_other_ways_follow_their_formulas() {
    assertThat(litres("per_floor_area: {rate: 3 l/s, area: 10 m2}" + SOURCE))
        .isCloseTo(30, within(1e-9));
    assertThat(litres("air_change: 0.5 /h" + SOURCE)).isCloseTo(33.333, within(1e-3));
    assertThat(litres("fixed: 18 l/s, factor: 0.5" + SOURCE)).isCloseTo(9, within(1e-9));
    assertThat(litres("by_main_rooms: {steps: [{count: 3, rate: 7 l/s}]}" + SOURCE))
        .isCloseTo(7, within(1e-9));
    assertThat(
            litres(
                "leakage_credit: {share: 0.1, heights: [{storeys: 1, factor: 1}, {storeys:"
                    + " 2, factor: 1.5}, {storeys: 3, factor: 2}]}"
                    + SOURCE))
        .isCloseTo(500 * 0.4 * 0.1 * 1.5, within(1e-9));
  }

  /** −0.001 A² + 1.15 A + 20 turns at 575 m² and is held there. */
  @Test
  void a_polynomial_that_turns_is_held_at_its_turning_point() {
    String down = "floor_polynomial: {constant: 20 l/s, per_m2: 1.15 l/s, per_m4: -0.001 l/s}";
    assertThat(litres(down + SOURCE, facts(575, 2, 3, 4, false)))
        .isCloseTo(350.625, within(1e-9))
        .isEqualTo(litres(down + SOURCE, facts(900, 2, 3, 4, false)));
    String up = "floor_polynomial: {constant: 1 l/s, per_m2: 0 l/s, per_m4: 0.001 l/s}";
    assertThat(litres(up + SOURCE)).isCloseTo(11, within(1e-9));
  }

  /** Living 20 and bedroom 8 m² are habitable: 0.7 by m² and 7 at least gives 14 + 7. */
  @Test
  void rooms_of_a_kind_are_summed() {
    assertThat(litres("per_room: {rooms: [habitable], per_m2: 0.7 l/s, least: 7 l/s}" + SOURCE))
        .isCloseTo(21, within(1e-9));
    assertThat(litres("per_room: {rooms: [bedroom, kitchen], each: 5 l/s}" + SOURCE))
        .isCloseTo(10, within(1e-9));
    assertThat(litres("per_room: {rooms: [living], each: 1 l/s, per_m2: 1 l/s}" + SOURCE))
        .isCloseTo(21, within(1e-9));
    assertThat(litres("per_room: {rooms: [utility], each: 5 l/s}" + SOURCE)).isZero();
  }

  @Test
  void the_greatest_governs_and_the_first_of_equals() {
    Demand demand =
        Demands.of(
            term(
                "factor: 2, greatest_of: ["
                    + fixed("name: a, fixed: 5 l/s")
                    + ", "
                    + fixed("name: b, fixed: 7 l/s")
                    + ", "
                    + fixed("name: c, fixed: 7 l/s, confidence: medium, note: Look.")
                    + "]"),
            HOME);
    assertThat(demand.rate()).hasValue(Range.exactly(0.014));
    assertThat(demand.governedBy()).isEqualTo("b");
    assertThat(demand.parts())
        .extracting(p -> p.rate().likely())
        .containsExactly(0.01, 0.014, 0.014);
    assertThat(demand.parts()).extracting(Demand.Part::governs).containsExactly(false, true, false);
    assertThat(demand.notes()).containsExactly("Look.");
    assertThat(demand.confidence()).isPresent();
    assertThat(demand.fromMemory()).isFalse();
  }

  @Test
  void sums_add_and_differences_stop_at_nothing() {
    String a = fixed("fixed: 5 l/s");
    String b = fixed("fixed: 7 l/s");
    assertThat(litres("sum_of: [" + a + ", " + b + "]")).isCloseTo(12, within(1e-9));
    assertThat(litres("difference_of: [" + b + ", " + a + "]")).isCloseTo(2, within(1e-9));
    assertThat(litres("difference_of: [" + a + ", " + b + "]")).isZero();
    assertThat(litres("difference_of: [" + b + ", " + a + ", " + a + "]")).isZero();
    Demand sum = Demands.of(term("name: both, sum_of: [" + a + ", " + b + "]"), HOME);
    assertThat(sum.parts()).extracting(Demand.Part::name).containsExactly("both");
    assertThat(sum.used()).hasSize(2);
    assertThat(Demands.of(term("fixed: 5 l/s" + SOURCE), HOME).governedBy())
        .isEqualTo("the rate of the document");
  }

  @ParameterizedTest
  @CsvSource({
    "one habitable room, true, 1, 5",
    "one habitable room, false, 1, 1",
    "several habitable rooms, false, 1, 5",
    "several habitable rooms, true, 1, 1",
    "single storey, false, 1, 5",
    "single storey, false, 2, 1",
    "multi storey, false, 2, 5",
    "multi storey, false, 1, 1"
  })
  void a_part_holds_where_its_condition_does(
      String when, boolean oneRoom, int storeys, double expected) {
    String parts = fixed("fixed: 1 l/s") + ", " + fixed("when: " + when + ", fixed: 5 l/s");
    assertThat(litres("greatest_of: [" + parts + "]", facts(100, storeys, 3, 4, oneRoom)))
        .isCloseTo(expected, within(1e-9));
  }

  @Test
  void facts_that_are_missing_are_named_once_and_nothing_is_computed() {
    RuleFacts bare =
        new RuleFacts(
            Range.exactly(100),
            Range.exactly(240),
            2,
            3,
            Range.exactly(4),
            Range.exactly(0.5),
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty());
    String mainRooms = fixed("by_main_rooms: {steps: [{count: 1, rate: 1 l/s}]}");
    Demand demand =
        Demands.of(
            term(
                "greatest_of: ["
                    + String.join(
                        ", ",
                        mainRooms,
                        mainRooms,
                        fixed("per_room: {rooms: [living], each: 1 l/s}"),
                        fixed("leakage_credit: {share: 1, heights: [{storeys: 1, factor: 1}]}"),
                        fixed("fixed: 1 l/s"))
                    + "]"),
            bare);
    assertThat(demand.rate()).isEmpty();
    assertThat(demand.parts()).isEmpty();
    assertThat(demand.governedBy()).isEmpty();
    assertThat(demand.missing())
        .hasSize(3)
        .anyMatch(m -> m.contains("weather and shielding factor"));
    assertThat(demand.sources()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fixed: 1 l/s | 1 l/s",
        "fixed: 1 l/s, factor: 0.7 | 0.7 × 1 l/s",
        "air_change: 0.5 /h | 0.5 /h × V",
        "per_floor_area: {rate: 3 cfm, area: 100 ft2} | 3 cfm per 100 ft2 × A",
        "per_person: {rate: 7 l/s, counted: occupants} | 7 l/s × N_persons",
        "per_person: {rate: 7 l/s, counted: bedrooms plus one} | 7 l/s × (N_bedrooms + 1)",
        "per_person: {rate: 7 l/s, counted: design occupancy} | 7 l/s × max(N_bedrooms + 1;"
            + " N_persons)",
        "by_main_rooms: {steps: [{count: 1, rate: 2 l/s}]} | table(N_main rooms: 1 → 2 l/s)",
        "by_bedrooms: {steps: [{count: 1, rate: 2 l/s}, {count: 2, rate: 3 l/s}]} |"
            + " table(N_bedrooms: 1 → 2 l/s, 2 → 3 l/s)",
        "by_bedrooms: {steps: [{count: 1, rate: 2 l/s}], per_further: 4 l/s} | table(N_bedrooms: 1"
            + " → 2 l/s, 4 l/s each further)",
        "by_floor_and_bedrooms: {rows: [{above: 9 m2, steps: [{count: 1, rate: 2 l/s}]}]} | table(A;"
            + " N_bedrooms: A > 9 m2: 1 → 2 l/s)",
        "floor_polynomial: {constant: 20 m3/h, per_m2: 1 m3/h, per_m4: 2 m3/h} | (20 m3/h + 1 m3/h"
            + " × A + 2 m3/h × A²)",
        "per_room: {rooms: [living], each: 5 l/s} | Σ_rooms 5 l/s",
        "per_room: {rooms: [living], per_m2: 0.9 l/s, least: 7 l/s} | Σ_rooms max(0.9 l/s per m² ×"
            + " A_room; 7 l/s)",
        "per_room: {rooms: [living], each: 5 l/s, per_m2: 0.9 l/s} | Σ_rooms 5 l/s + 0.9 l/s per m²"
            + " × A_room",
        "leakage_credit: {share: 0.052, heights: [{storeys: 1, factor: 1.5}]} | 0.052 × w ×"
            + " s(N_storeys: 1 → 1.5) × n50 × V"
      })
  void a_formula_is_written_in_the_units_of_its_document(String yaml, String formula) {
    assertThat(RateFormula.of(term(yaml + SOURCE))).isEqualTo(formula);
  }

  @Test
  void combinations_are_written_as_such() {
    String two = fixed("fixed: 1 l/s") + ", " + fixed("fixed: 2 l/s");
    assertThat(RateFormula.of(term("greatest_of: [" + two + "]"))).isEqualTo("max(1 l/s; 2 l/s)");
    assertThat(RateFormula.of(term("sum_of: [" + two + "]"))).isEqualTo("(1 l/s + 2 l/s)");
    assertThat(RateFormula.of(term("difference_of: [" + two + "]")))
        .isEqualTo("max(0; 1 l/s − 2 l/s)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fixed: 1 l/s, air_change: 1 /h, source: {document: D, how: seen} | exactly one way",
        "name: nothing | exactly one way",
        "fixed: 1 l/s | a source",
        "difference_of: [{fixed: 1 l/s, source: {document: D, how: seen}}] | at least two terms",
        "when: no external wall, fixed: 1 l/s, source: {document: D, how: seen} | a condition on the"
            + " home",
        "difference_of: [{fixed: 1 l/s, source: {document: D, how: seen}}, {when: single storey,"
            + " fixed: 1 l/s, source: {document: D, how: seen}}] | none of which has a when",
        "by_floor_and_bedrooms: {rows: [{above: 9 m2, steps: [{count: 1, rate: 2 l/s}]}, {above: 9"
            + " m2, steps: [{count: 1, rate: 2 l/s}]}]}, source: {document: D, how: seen} | floor"
            + " areas that rise"
      })
  void a_term_that_cannot_be_meant_is_refused(String yaml, String expected) {
    Reading<Term> reading =
        RecordReader.read(Term.class, "{" + yaml + "}", "term.yaml", Vocabularies.none());
    assertThat(reading.value()).isEmpty();
    assertThat(reading.problems().stream().map(ProblemText::of).toList())
        .anyMatch(text -> text.contains(expected));
  }
}
