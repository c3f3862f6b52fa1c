package org.drysill.report.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.drysill.report.table.Cells;
import org.junit.jupiter.api.Test;

class SectionTest {
  @Test
  void columns_ask_for_as_much_as_their_first_piece_which_is_not_parted_takes() {
    assertThat(asked("short")).isEqualTo(31);
    assertThat(asked("long ".repeat(120))).isBetween(45, 70);
  }

  @Test
  void nothing_asks_for_more_than_what_leaves_a_page_half_full() {
    assertThat(asked("endless ".repeat(1000))).isEqualTo(112);
  }

  /** Of a table in small print as well, so that no last row stands alone on a page. */
  @Test
  void the_last_two_rows_of_a_table_stay_together() {
    Row row = new Row(List.of(Cells.text("Air"), Cells.text("31")), false, false);
    Grid grid =
        Grid.wide("", List.of(column("what"), column("l/s")), List.of(row, row, row), "").densely();
    List<Integer> asked = grid.rowRooms().stream().map(Integer::valueOf).toList();
    assertThat(asked.get(1)).isGreaterThanOrEqualTo(2 * asked.get(0));
  }

  private static Column column(String head) {
    return new Column(head, false, 0);
  }

  private static int asked(String note) {
    WorkingEntry entry = new WorkingEntry("w1", "Air", "31 l/s", "", "", "");
    WorkingFamily family = new WorkingFamily("w1", "q = a", List.of(), note, List.of(entry));
    Workings workings = new Workings(List.of(), List.of(family));
    Section section =
        new Section("workings", "How", "Workings", false, List.of(workings)).compactly();
    return Integer.parseInt(section.rooms().get(0));
  }
}
