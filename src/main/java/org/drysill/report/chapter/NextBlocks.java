package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import org.drysill.options.NextReading;
import org.drysill.options.OptionsResult;
import org.drysill.options.PackagesResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;

/** What to measure next, and what makes the results unsure. */
final class NextBlocks {
  private NextBlocks() {}

  /** Nothing where nothing that was reckoned is in doubt. */
  static List<Block> of(Desk desk) {
    OptionsResult options = desk.subject().options();
    if (options.next().isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Subhead(List.of(), "What to measure next"));
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            "What is still open hangs mostly on "
                + Words.count(options.next().size(), "thing", "things")
                + " that can be read. Each share says how much of the spread of a result the reading"
                + " would take away, were it exact."));
    blocks.add(table(options.next()));
    options
        .packages()
        .flatMap(PackagesResult::sureness)
        .flatMap(sure -> TornadoChart.of(desk, sure))
        .ifPresent(chart -> blocks.add(ChartBlocks.wide("tornado", chart)));
    return blocks;
  }

  private static Grid table(List<NextReading> readings) {
    List<Row> rows = new ArrayList<>();
    for (NextReading reading : readings) {
      rows.add(
          Cells.row(
              Cells.text(Integer.toString(rows.size() + 1)),
              Cells.text(Words.sentence(reading.ask())),
              Cells.text(reading.with()),
              Cells.text(reading.when()),
              Cells.text(percent(reading.ofAir())),
              Cells.text(percent(reading.ofMould())),
              Cells.text(percent(reading.ofRanking()))));
    }
    return Grid.wide(
        "Which reading takes away how much of which doubt",
        List.of(
            Cells.numbers("", 7),
            Cells.words("what and where"),
            Cells.words("with what", 31),
            Cells.words("when, how long", 38),
            Cells.numbers("enough air, %", 14),
            Cells.numbers("no mould, %", 14),
            Cells.numbers("ranking, %", 15)),
        rows,
        "No mould: on walls and corners. Ranking: which of the best two packages costs less. A dash:"
            + " not in doubt, or less than a twentieth, or less than chance.");
  }

  private static String percent(double share) {
    return share > 0 ? Long.toString(Math.round(100 * share)) : Cells.NOTHING;
  }
}
