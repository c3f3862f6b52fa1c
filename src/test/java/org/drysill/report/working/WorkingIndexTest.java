package org.drysill.report.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.report.block.WorkingEntry;
import org.drysill.report.block.WorkingFamily;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.UnitSystem;
import org.junit.jupiter.api.Test;

class WorkingIndexTest {
  private static final Numbers NUMBERS = new Numbers(UnitSystem.METRIC, "GBP");
  private final Figure hall = read("hall", "Air of the hall", 18);
  private final Figure attic = read("attic", "Air of the attic", 12);
  private final Figure mean =
      new Figure(
          "mean",
          "Mean air",
          Range.exactly(15),
          Unit.CELSIUS,
          Basis.CALCULATED,
          () ->
              new Working(
                  "T = (T1 + T2) / 2",
                  List.of(Working.Input.of("T1", hall), Working.Input.of("T2", attic)),
                  List.of(),
                  Optional.empty()));

  private static Figure read(String id, String name, double celsius) {
    return new Figure(
        id,
        name,
        Range.exactly(celsius),
        Unit.CELSIUS,
        Basis.MEASURED,
        () -> new Working("as read", List.of(), List.of(), Optional.empty()));
  }

  @Test
  void figures_by_one_formula_share_a_number_and_print_the_formula_once() {
    WorkingIndex index = new WorkingIndex(Found.in(List.of(hall, attic)));
    assertThat(index.mark(hall)).isEqualTo("w1");
    assertThat(index.mark(attic)).isEqualTo("w1.2");
    assertThat(index.mark(hall)).isEqualTo("w1");
    assertThat(index.families(NUMBERS))
        .extracting(WorkingFamily::formula)
        .containsExactly("as read");
  }

  @Test
  void equal_figures_are_one_for_the_reader() {
    WorkingIndex index = new WorkingIndex(Found.in(List.of(hall)));
    assertThat(index.mark(hall)).isEqualTo(index.mark(read("other", hall.name(), 18)));
    assertThat(index.mark(read("warmer", hall.name(), 19))).isEqualTo("w1.2");
  }

  @Test
  void whatever_a_figure_rests_on_gets_a_number_too() {
    WorkingIndex index = new WorkingIndex(Found.in(List.of(mean, hall, attic)));
    index.mark(mean);
    List<WorkingFamily> families = index.families(NUMBERS);
    assertThat(families).extracting(WorkingFamily::number).containsExactly("w1", "w2");
    assertThat(families.get(0).items())
        .extracting(WorkingEntry::inputs)
        .containsExactly(
            "T1 = 18.0\u00a0°C, Air of the hall, w2; T2 = 12.0\u00a0°C, Air of the attic, w2.2");
  }

  @Test
  void what_figures_of_a_family_share_is_said_once_and_every_value_stays() {
    Figure bath = warmed("bath", "Warm air of the bath", attic, 3);
    Figure loft = warmed("loft", "Warm air of the loft", hall, 3);
    WorkingIndex index = new WorkingIndex(Found.in(List.of(bath, loft, hall, attic)));
    index.mark(bath);
    index.mark(loft);
    WorkingFamily family = index.families(NUMBERS).get(0);
    assertThat(family.note()).isEqualTo("In all of them dT = 3.0\u00a0K, Warming, assumed.");
    assertThat(family.items())
        .extracting(WorkingEntry::name)
        .containsExactly("Warm air of the bath", "Loft");
    assertThat(family.items())
        .extracting(WorkingEntry::inputs)
        .containsExactly("T = 12.0\u00a0°C, Air of the attic, w2", "T = 18.0 (w2.2)");
  }

  private static Figure warmed(String id, String name, Figure air, double kelvin) {
    return new Figure(
        id,
        name,
        Range.exactly(air.likely() + kelvin),
        Unit.CELSIUS,
        Basis.CALCULATED,
        () ->
            new Working(
                "T + dT",
                List.of(
                    Working.Input.of("T", air),
                    Working.Input.of(
                        "dT", "Warming", Range.exactly(kelvin), Unit.KELVIN, Basis.ASSUMED)),
                List.of(),
                Optional.empty()));
  }

  @Test
  void a_source_or_remark_said_before_is_pointed_to() {
    FirstMentions sources = new FirstMentions("sources");
    String one = "A standard of some kind, 2012, Annex E";
    assertThat(sources.at("w1", List.of(one))).containsExactly(one);
    assertThat(sources.at("w2", List.of(one))).containsExactly("sources as at w1");
    assertThat(sources.at("w3", List.of("Another standard, 2017, clause 6", one, "Short, 5")))
        .containsExactly(
            "Another standard, 2017, clause 6", "Short, 5", "further sources as at w1");
    assertThat(sources.at("w4", List.of("Short, 5"))).containsExactly("Short, 5");
  }

  @Test
  void names_are_told_by_what_follows_their_common_beginning() {
    SharedName names =
        new SharedName(List.of("air of the hall", "air of the front room", "air of the hall"));
    assertThat(List.of(names.of(0), names.of(1), names.of(2)))
        .containsExactly("Air of the hall", "Front room", "again");
    SharedName unlike = new SharedName(List.of("air of the hall", "air drawn out"));
    assertThat(unlike.of(1)).isEqualTo("Air drawn out");
    SharedName shorter = new SharedName(List.of("air of the hall", "air of the"));
    assertThat(shorter.of(1)).isEqualTo("Air of the");
  }

  @Test
  void quotations_of_the_survey_stand_alone_where_each_figure_is_one() {
    WorkingIndex index = new WorkingIndex(Found.in(List.of()));
    index.mark(stated("hall", 19));
    index.mark(stated("loft", 17));
    WorkingFamily family = index.families(NUMBERS).get(0);
    assertThat(family.note()).isEqualTo("In quotation marks what the survey says.");
    assertThat(family.items()).extracting(WorkingEntry::note).containsExactly("“19 C”", "“17 C”");
    assertThat(family.items()).extracting(WorkingEntry::basis).containsExactly("declared", "");
  }

  private static Figure stated(String room, int celsius) {
    return new Figure(
        room,
        "Usual temperature of the " + room,
        Range.exactly(celsius),
        Unit.CELSIUS,
        Basis.DECLARED,
        () ->
            new Working(
                "as stated",
                List.of(),
                List.of(),
                Optional.of("The survey says: " + celsius + " C.")));
  }

  @Test
  void an_assumed_value_is_not_printed_as_its_own_input() {
    Figure assumed =
        new Figure(
            "sheet",
            "Sheet",
            Range.exactly(5),
            Unit.METRE,
            Basis.ASSUMED,
            () ->
                new Working(
                    "assumed",
                    List.of(
                        Working.Input.of(
                            "x", "assumed", Range.exactly(5), Unit.METRE, Basis.ASSUMED)),
                    List.of(),
                    Optional.empty()));
    WorkingIndex index = new WorkingIndex(Found.in(List.of(assumed)));
    index.mark(assumed);
    assertThat(index.families(NUMBERS).get(0).items())
        .extracting(WorkingEntry::inputs)
        .containsExactly("");
  }
}
