package org.drysill.report.working;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Fact;
import org.drysill.report.block.Facts;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Note;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Step;
import org.drysill.report.block.Subhead;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.UnitSystem;
import org.junit.jupiter.api.Test;

class PrintedFiguresTest {
  private static final Figure READ = figure("read", Basis.MEASURED, 18.25, List.of());
  private static final Figure MADE =
      figure(
          "made",
          Basis.CALCULATED,
          9.31,
          List.of(
              Working.Input.of("t", "read", Range.exactly(18.25), Unit.CELSIUS, Basis.MEASURED)));
  private static final Figure SURE =
      new Figure("sure", "sure", new Range(3, 4, 5), Unit.PASCAL, Basis.ASSUMED, MADE::working);

  private static Figure figure(String id, Basis basis, double value, List<Working.Input> inputs) {
    Working working = new Working("x(" + id + ")", inputs, List.of(), Optional.empty());
    return new Figure(id, id, Range.exactly(value), Unit.CELSIUS, basis, () -> working);
  }

  private final Found found = Found.in(List.of(READ, MADE, SURE));
  private final WorkingIndex index = new WorkingIndex(found);
  private final PrintedFigures printed = new PrintedFigures(found, index);
  private final Numbers numbers = new Numbers(UnitSystem.METRIC, "GBP").heardBy(printed);

  private List<Note> notes(Block block) {
    Section section = new Section("s", "s", "s", false, List.of(block));
    return printed.led(section).blocks().get(0).margin();
  }

  private static Block sentence(String text) {
    return new Prose(List.of(), "", "", text);
  }

  @Test
  void a_figure_in_a_sentence_gets_the_number_of_its_working_beside_it() {
    assertThat(notes(sentence("It is " + numbers.likely(MADE) + " there.")))
        .containsExactly(Note.workings(List.of("w1")));
  }

  @Test
  void one_that_leads_there_already_gets_no_second_one() {
    Note own = Note.working(index.mark(MADE), "the dew point.");
    assertThat(notes(new Prose(List.of(own), "", "", numbers.likely(MADE)))).containsExactly(own);
  }

  @Test
  void a_reading_as_it_was_read_has_no_working() {
    assertThat(notes(sentence(numbers.likely(READ)))).isEmpty();
  }

  @Test
  void a_number_that_is_part_of_another_is_not_that_figure() {
    numbers.likely(MADE);
    assertThat(notes(sentence("It is 19.3" + Numbers.JOIN + "°C."))).isEmpty();
    assertThat(notes(sentence("It is 9.3 metres."))).isEmpty();
  }

  @Test
  void what_was_heard_in_one_section_is_not_looked_for_in_the_next() {
    String said = numbers.likely(MADE);
    assertThat(notes(sentence("Nothing."))).isEmpty();
    assertThat(notes(sentence(said))).isEmpty();
  }

  @Test
  void cells_of_number_columns_are_figures_and_lead_to_their_formula_once() {
    Block grid =
        Grid.wide(
            "",
            List.of(Cells.words("what"), Cells.numbers("a", 10), Cells.numbers("b", 10)),
            List.of(
                Cells.row(
                    Cells.text("x"), Cells.value(numbers, SURE), Cells.text(numbers.plain(MADE)))),
            "");
    assertThat(notes(grid)).containsExactly(Note.workings(List.of("w1")));
  }

  @Test
  void a_bare_cell_of_words_is_none() {
    Block grid =
        Grid.wide(
            "",
            List.of(Cells.words("what")),
            List.of(Cells.row(Cells.text(numbers.plain(MADE)))),
            "");
    assertThat(notes(grid)).isEmpty();
  }

  @Test
  void every_kind_of_block_that_says_something_is_read() {
    List<Block> blocks =
        List.of(
            new Bullets(List.of(), List.of(numbers.likely(MADE))),
            new Facts(List.of(), List.of(new Fact("x", numbers.likely(MADE)))),
            new Step(List.of(), "1", "x", "", List.of(numbers.likely(MADE)), List.of()),
            new CautionBlock(List.of(), "x", numbers.likely(MADE)));
    Section section = new Section("s", "s", "s", false, blocks);
    assertThat(printed.led(section).blocks())
        .extracting(Block::margin)
        .containsOnly(List.of(Note.workings(List.of("w1"))));
  }

  @Test
  void a_block_without_words_of_its_own_stays_as_it_is() {
    Block head = new Subhead(List.of(), numbers.likely(MADE));
    assertThat(notes(head)).isEmpty();
  }
}
