package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.change.AirChange;
import org.drysill.assess.change.ChangeResult;
import org.drysill.assess.change.ColdSpotChange;
import org.drysill.assess.change.FanChange;
import org.drysill.assess.change.Shown;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Cell;
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
    }
    places(desk, change.coldSpots()).ifPresent(blocks::add);
    fans(desk, change.fans()).ifPresent(blocks::add);
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
    return Grid.wide(
        Words.date(change.before()) + " against " + Words.date(change.after()),
        List.of(
            Cells.words("air of"),
            Cells.numbers("air, " + numbers.unit(Unit.CELSIUS), 24),
            Cells.numbers("relative humidity, %", 19),
            Cells.numbers("percentage points", 19),
            Cells.numbers("of that by temperature", 19),
            Cells.numbers("by water in the air", 17),
            Cells.numbers("vapour excess, " + numbers.unit(Unit.PASCAL), 25),
            Cells.words("shown", 19)),
        airs.stream().map(a -> row(desk, a)).toList(),
        "Before → after. Percentage points are those of relative humidity. The excess over outdoors"
            + " counts as changed where it changed by more than the errors of the instruments"
            + " together.");
  }

  private static Row row(Desk desk, AirChange air) {
    Numbers numbers = desk.numbers();
    List<Cell> cells =
        List.of(
            Cells.text(Words.capital(air.name()))
                .with(
                    List.of(
                        desk.index().mark(air.points()), desk.index().mark(air.excessChange()))),
            pair(numbers, air.temperatureBefore(), air.temperatureAfter()),
            pair(numbers, air.humidityBefore(), air.humidityAfter()),
            Cells.text(numbers.plain(air.points())),
            Cells.text(numbers.plain(air.pointsFromTemperature())),
            Cells.text(numbers.plain(air.pointsFromMoisture())),
            pair(numbers, air.excessBefore(), air.excessAfter()),
            Cells.text(shown(air.shown())));
    return new Row(cells, "home".equals(air.id()));
  }

  private static Cell pair(Numbers numbers, Figure before, Figure after) {
    return Cells.text(numbers.plain(before) + " → " + numbers.plain(after));
  }

  private static String shown(Shown shown) {
    return switch (shown) {
      case FELL -> "fell";
      case ROSE -> "rose";
      case NOT_SHOWN -> "not shown";
    };
  }

  private static Optional<Block> places(Desk desk, List<ColdSpotChange> places) {
    if (places.isEmpty()) {
      return Optional.empty();
    }
    Numbers numbers = desk.numbers();
    String kelvin = numbers.unit(Unit.KELVIN);
    String area = numbers.unit(Unit.SQUARE_METRE);
    return Optional.of(
        new Grid(
            List.of(),
            "Surfaces against the dew point of their room, and mould",
            List.of(
                Cells.words("place"),
                Cells.numbers("above dew point before, " + kelvin, 26),
                Cells.numbers("after, " + kelvin, 20),
                Cells.numbers("mould before, " + area, 19),
                Cells.numbers("after, " + area, 14)),
            places.stream()
                .map(
                    p ->
                        Cells.row(
                            Cells.text(Words.capital(p.name()), desk.room(p.room())),
                            Cells.value(numbers, p.marginBefore()),
                            Cells.value(numbers, p.marginAfter()),
                            plain(numbers, p.mouldBefore()),
                            plain(numbers, p.mouldAfter())))
                .toList(),
            ""));
  }

  private static Cell flow(Numbers numbers, Optional<Figure> flow) {
    return flow.map(f -> Cells.text(numbers.plain(f), Words.basis(f.basis())))
        .orElse(Cells.text(Cells.NOTHING));
  }

  private static Cell plain(Numbers numbers, Optional<Figure> figure) {
    return Cells.text(figure.map(numbers::plain).orElse(Cells.NOTHING));
  }

  private static Optional<Block> fans(Desk desk, List<FanChange> fans) {
    if (fans.isEmpty()) {
      return Optional.empty();
    }
    Numbers numbers = desk.numbers();
    String flow = numbers.unit(Unit.AIRFLOW);
    return Optional.of(
        new Grid(
            List.of(),
            "Fans",
            List.of(
                Cells.words("fan"),
                Cells.numbers("before, " + flow, 30),
                Cells.numbers("after, " + flow, 30)),
            fans.stream()
                .map(
                    f ->
                        Cells.row(
                            Cells.text(Words.capital(f.name()), desk.room(f.room())),
                            flow(numbers, f.flowBefore()),
                            flow(numbers, f.flowAfter())))
                .toList(),
            "A dash: not there, or its flow is not known."));
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
