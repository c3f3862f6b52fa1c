package org.drysill.report.roomair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.rooms.RoomAirResult;
import org.drysill.assess.ventilation.rooms.RoomBalance;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.ChartBlock;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Subhead;
import org.drysill.report.chart.AirSketch;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** The way of air from room to room: a sketch of the home, and each room in balance. */
public final class RoomAirBlocks {
  /** Up to this ratio of the most to the least, rooms count as alike. */
  private static final double ALIKE = 1.1;

  private final Desk desk;
  private final Numbers numbers;
  private final RoomAirResult air;

  private RoomAirBlocks(Desk desk) {
    this.desk = desk;
    this.numbers = desk.numbers();
    this.air = desk.subject().ventilation().rooms();
  }

  /** The blocks; none for a home without a heated room. */
  public static List<Block> of(Desk desk) {
    return desk.subject().ventilation().rooms().rooms().isEmpty()
        ? List.of()
        : new RoomAirBlocks(desk).blocks();
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Subhead(List.of(), "From room to room"));
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            "This is the mean over the day: each fan with its flow averaged over the hours that it"
                + " runs, wind and warmth as in the cold season, every internal door closed. Each"
                + " room takes in as much air as it gives. Warm air rises, which brings air in"
                + " below and lets it out above; how much is not known here, so that rooms upstairs"
                + " may get less outdoor air than shown and those downstairs more."));
    int number = 0;
    for (AirSketch sketch : new Sketches(desk, message()).all()) {
      number++;
      String height = Long.toString((long) Math.ceil(sketch.heightMm()));
      blocks.add(new ChartBlock(List.of(), "chart-rooms-" + number, sketch, height, true));
    }
    blocks.add(table());
    return blocks;
  }

  private String message() {
    ProvidedAir provided = desk.subject().ventilation().provided();
    double leaks = air.rooms().stream().mapToDouble(RoomBalance::leaksInM3S).sum();
    double all = provided.wholeHome().likely();
    if (sum(RoomBalance::supplyM3S) == 0) {
      return "All outdoor air, "
          + numbers.one(all, Unit.AIRFLOW, Rounding.DOWN)
          + ", comes in through leaks and ventilators";
    }
    String of =
        numbers.plain(leaks, Unit.AIRFLOW, Rounding.NEAREST)
            + " of "
            + numbers.one(all, Unit.AIRFLOW, Rounding.DOWN);
    return leaks * 2 >= all
        ? "Most of the outdoor air, " + of + ", comes in through leaks and ventilators"
        : "Fans bring most of the outdoor air in; " + of + " come through leaks and ventilators";
  }

  private Block table() {
    String flow = numbers.unit(Unit.AIRFLOW);
    List<Row> rows = new ArrayList<>();
    air.rooms().forEach(room -> rows.add(row(room)));
    rows.add(home());
    return Grid.wide(
            least(),
            List.of(
                Cells.words("room, flows in " + flow),
                Cells.numbers("in by fans", 15),
                Cells.numbers("in by leaks", 15),
                Cells.numbers("in from rooms", 15),
                Cells.numbers("out by fans", 15),
                Cells.numbers("out by leaks", 15),
                Cells.numbers("out to rooms", 15),
                Cells.numbers("outdoor air, " + flow, 24),
                Cells.numbers("outdoor air, ach", 19)),
            rows,
            "Likely values; in brackets the same with fans and leaks at their least and at their most."
                + " Outdoor air is what comes in by fans and leaks of the room itself; air from other"
                + " rooms has been breathed there. How the leaks share out is an assumption.")
        .densely();
  }

  /** Names the room that is worst off, unless that would be an artefact of how leaks are spread. */
  private String least() {
    List<Figure> changes = new ArrayList<>();
    air.rooms().stream()
        .filter(this::habitable)
        .forEach(r -> r.airChange().ifPresent(changes::add));
    changes.sort(Comparator.comparingDouble(Figure::likely));
    if (changes.isEmpty()) {
      return "Air in and out of each room";
    }
    Figure least = changes.get(0);
    String few = numbers.likely(least);
    if (changes.get(changes.size() - 1).likely() < ALIKE * least.likely()) {
      return "With leaks spread alike, each room that people stay in gets about " + few;
    }
    return Words.capital(least.name()) + " are the fewest where people stay, " + few;
  }

  private boolean habitable(RoomBalance room) {
    return desk.subject().home().room(room.room()).filter(RoomFacts::habitable).isPresent();
  }

  private Row row(RoomBalance room) {
    return Cells.row(
        Cells.text(Words.capital(Words.shortened(room.name(), 60)))
            .with(room.outdoorAir().map(desk.index()::mark).stream().toList()),
        flow(room.supplyM3S()),
        flow(room.leaksInM3S()),
        flow(room.fromRoomsM3S()),
        flow(room.extractM3S()),
        flow(room.leaksOutM3S()),
        flow(room.toRoomsM3S()),
        spread(room.outdoorAir()),
        Cells.text(room.airChange().map(numbers::plain).orElse(Cells.NOTHING)));
  }

  private Row home() {
    ProvidedAir provided = desk.subject().ventilation().provided();
    return Cells.strong(
        Cells.text("Whole home"),
        flow(sum(RoomBalance::supplyM3S)),
        flow(sum(RoomBalance::leaksInM3S)),
        Cells.text(Cells.NOTHING),
        flow(sum(RoomBalance::extractM3S)),
        flow(sum(RoomBalance::leaksOutM3S)),
        Cells.text(Cells.NOTHING),
        Cells.text(numbers.spread(provided.wholeHome().value(), Unit.AIRFLOW, Rounding.DOWN)),
        Cells.text(numbers.plain(provided.airChange())));
  }

  private double sum(ToDoubleFunction<RoomBalance> part) {
    return air.rooms().stream().mapToDouble(part).sum();
  }

  private Cell flow(double m3S) {
    return Cells.text(m3S > 0 ? numbers.plain(m3S, Unit.AIRFLOW, Rounding.NEAREST) : Cells.NOTHING);
  }

  private Cell spread(Optional<Figure> figure) {
    return Cells.text(
        figure
            .map(f -> numbers.spread(f.value(), f.unit(), Rounding.NEAREST))
            .orElse(Cells.NOTHING));
  }
}
