package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.ChangeResult;
import org.drysill.assess.change.air.AirChange;
import org.drysill.report.block.Block;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.compared.ComparedGroup;
import org.drysill.report.compared.ComparedRow;
import org.drysill.report.compared.ComparedRow.Value;
import org.drysill.report.compared.Comparison;
import org.drysill.report.compared.Split;
import org.drysill.report.compared.Statement;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;

/** Two visits to the same home on equal terms. */
final class ChangeChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    return desk.subject().change().map(c -> section(desk, c));
  }

  private static Section section(Desk desk, ChangeResult change) {
    Statement statement = new Statement(change, desk.numbers());
    List<Block> blocks = new ArrayList<>();
    if (change.sameHome().verdict() == Verdict.SHORT) {
      blocks.add(
          new CautionBlock(List.of(), "Is it one home?", Words.sentence(change.sameHome().said())));
    }
    blocks.add(
        new Prose(
            desk.notes(List.of(change.home().map(h -> h.excess().change()))),
            "",
            "In plain words.",
            statement.plain()));
    change.home().map(home -> split(desk, home)).ifPresent(blocks::add);
    List<ComparedGroup> groups = Comparison.of(change, desk.numbers(), desk::room);
    if (!groups.isEmpty()) {
      blocks.add(table(desk, change, groups));
    }
    said(blocks, "Between the visits.", statement.between());
    said(
        blocks,
        "Comparisons with published figures that came out otherwise.",
        statement.verdicts().strip());
    said(blocks, "In one visit only.", String.join("; ", change.notCompared()));
    said(blocks, "For the record.", statement.criteria());
    blocks.add(
        new CautionBlock(List.of(), "What two visits can show.", Words.sentence(change.caution())));
    return new Section("change", heading(change), "Before and after", true, blocks);
  }

  private static String heading(ChangeResult change) {
    String since = " between " + Words.date(change.before()) + " and " + Words.date(change.after());
    return change
        .home()
        .map(
            h ->
                switch (h.shown()) {
                  case FELL -> "The air indoors got drier, against outdoor air," + since;
                  case ROSE -> "The air indoors got damper, against outdoor air," + since;
                  case NOT_SHOWN -> "No change of the moisture indoors is shown" + since;
                })
        .orElse("What changed" + since);
  }

  private static Block split(Desk desk, AirChange home) {
    return ChartBlocks.of(
        "split",
        new Split(home.humidity(), desk.numbers()).chart(),
        desk.note(home.humidity().points()),
        desk.note(
            home.humidity().fromIndoors().orElse(home.humidity().fromMoisture()),
            "how the parts are found"));
  }

  private static Grid table(Desk desk, ChangeResult change, List<ComparedGroup> groups) {
    List<Column> columns =
        List.of(
            Cells.words(""),
            Cells.numbers(Words.date(change.before()), 27),
            Cells.numbers(Words.date(change.after()), 27),
            Cells.numbers("change", 40),
            Cells.words("shown", 26));
    List<Row> rows = new ArrayList<>();
    for (ComparedGroup group : groups) {
      rows.add(Cells.part(group.title(), columns.size()));
      group.rows().forEach(row -> rows.add(row(desk, row)));
    }
    return Grid.wide(
            "Before and after on equal terms",
            columns,
            rows,
            "Percentage points are differences of two percentages; “a quarter less” is a share of"
                + " what it was. A filled mark: the change is greater than the errors of both"
                + " visits together. An open mark: no change is shown.")
        .densely();
  }

  private static Row row(Desk desk, ComparedRow row) {
    return Cells.row(
        Cells.text(row.label()).with(row.figures().stream().map(desk.index()::mark).toList()),
        value(row.before()),
        value(row.after()),
        value(row.change()),
        Cells.shown(row.judgement()));
  }

  private static Cell value(Value value) {
    return Cells.text(value.text(), value.more().isEmpty() ? "" : "(" + value.more() + ")");
  }

  private static void said(List<Block> blocks, String lead, String text) {
    if (!text.isEmpty()) {
      blocks.add(new Prose(List.of(), "", lead, Words.sentence(text)));
    }
  }
}
