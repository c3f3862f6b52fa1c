package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.change.AirChange;
import org.drysill.assess.change.ChangeResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** Two visits to the same home on equal terms. */
final class ChangeChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    return desk.subject().change().map(c -> section(desk, c));
  }

  private static Section section(Desk desk, ChangeResult change) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            desk.notes(List.of(change.home().map(AirChange::excessChange))),
            "",
            "",
            Words.sentence(change.outdoor().said())));
    List<AirChange> airs = new ArrayList<>(change.rooms());
    change.home().ifPresent(airs::add);
    if (!airs.isEmpty()) {
      blocks.add(airs(desk, change, airs));
      blocks.add(new Bullets(List.of(), airs.stream().map(a -> Words.sentence(a.said())).toList()));
    }
    said(blocks, "Places", change.coldSpots().stream().map(c -> c.said()).toList());
    said(blocks, "Fans", change.fans().stream().map(f -> f.said()).toList());
    mould(desk, change).ifPresent(blocks::add);
    said(blocks, "In one visit only", change.notCompared());
    blocks.add(
        new CautionBlock(List.of(), "What two visits can show.", Words.sentence(change.caution())));
    return new Section("change", heading(change), "Before and after", false, blocks);
  }

  private static String heading(ChangeResult change) {
    String since = " between " + Words.date(change.before()) + " and " + Words.date(change.after());
    return change
        .home()
        .map(
            h ->
                switch (h.shown()) {
                  case FELL -> "The moisture added indoors fell" + since;
                  case ROSE -> "The moisture added indoors rose" + since;
                  case NOT_SHOWN -> "No change of the moisture added indoors is shown" + since;
                })
        .orElse("What changed" + since);
  }

  private static Grid airs(Desk desk, ChangeResult change, List<AirChange> airs) {
    Numbers numbers = desk.numbers();
    return new Grid(
        List.of(),
        Words.date(change.before()) + " against " + Words.date(change.after()),
        List.of(
            Cells.words("air of"),
            Cells.numbers("air, " + numbers.unit(Unit.CELSIUS), 22),
            Cells.numbers("humidity, %", 18),
            Cells.numbers("percentage points", 18),
            Cells.numbers("excess before, Pa", 20),
            Cells.numbers("after, Pa", 20)),
        airs.stream().map(a -> row(numbers, a)).toList(),
        "");
  }

  private static Row row(Numbers numbers, AirChange air) {
    return Cells.row(
        Cells.text(Words.capital(air.name())),
        Cells.text(
            numbers.plain(air.temperatureBefore()) + " → " + numbers.plain(air.temperatureAfter())),
        Cells.text(
            numbers.plain(air.humidityBefore()) + " → " + numbers.plain(air.humidityAfter())),
        Cells.text(numbers.plain(air.points())),
        Cells.value(numbers, air.excessBefore()),
        Cells.value(numbers, air.excessAfter()));
  }

  private static void said(List<Block> blocks, String head, List<String> sentences) {
    if (!sentences.isEmpty()) {
      blocks.add(new Subhead(List.of(), head));
      blocks.add(new Bullets(List.of(), sentences.stream().map(Words::sentence).toList()));
    }
  }

  private static Optional<Block> mould(Desk desk, ChangeResult change) {
    Optional<Figure> before = change.mouldBefore();
    Optional<Figure> after = change.mouldAfter();
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Prose(
            List.of(),
            "",
            "Area with mould.",
            desk.numbers().likely(before.get())
                + " before, "
                + desk.numbers().likely(after.get())
                + " at this visit, over the places that give one."));
  }
}
