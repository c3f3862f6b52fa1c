package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.model.FittedUnknown;
import org.drysill.assess.model.ModelledRoom;
import org.drysill.assess.model.MoistureModelResult;
import org.drysill.physics.Range;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Subhead;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.ReadAndModelled;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** What the readings of all rooms tell together: the end of the chapter on sources. */
final class TogetherBlocks {
  /** Rooms in one chart: with more it would not share a page. */
  private static final int MOST_ROWS = 16;

  private final Desk desk;
  private final MoistureModelResult model;

  TogetherBlocks(Desk desk) {
    this.desk = desk;
    this.model = desk.subject().model();
  }

  List<Block> all() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Subhead(List.of(), heading()));
    if (model.silent().isPresent()) {
      String why = model.silent().get();
      boolean saidAlready =
          Words.sentence(desk.subject().moisture().finding().because()).equals(Words.sentence(why));
      return saidAlready ? List.of() : List.of(blocks.get(0), new Prose(List.of(), "", "", why));
    }
    blocks.add(split());
    List<ChartSpec> charts = charts();
    for (int i = 0; i < charts.size(); i++) {
      blocks.add(ChartBlocks.of("rooms-modelled" + (i == 0 ? "" : "-" + (i + 1)), charts.get(i)));
    }
    model.unexplained().forEach(room -> blocks.add(unexplained(room)));
    blocks.add(table());
    glass().ifPresent(blocks::add);
    return blocks;
  }

  private String heading() {
    if (model.silent().isPresent()) {
      return "The readings cannot be put together";
    }
    List<String> odd = model.unexplained().stream().map(ModelledRoom::roomName).toList();
    if (odd.isEmpty()) {
      return "Sources, air and doors together explain what was read in every room";
    }
    return "What was read does not fit the other rooms: " + Words.list(odd, Words::within);
  }

  private Block split() {
    Finding split = model.split().orElseThrow();
    return new Prose(
        desk.notes(List.of(split.provided(), split.required(), model.together())),
        "",
        "",
        Words.sentence(split.because())
            + split.settledBy().map(s -> " " + Words.sentence(s)).orElse(""));
  }

  private Block unexplained(ModelledRoom room) {
    return new Prose(
        desk.notes(List.of(room.measured(), Optional.of(room.modelled()))),
        "",
        Words.capital(room.roomName()) + ".",
        Words.sentence(room.finding().because())
            + " Its reading was left out of the rest. "
            + Words.sentence(room.finding().settledBy().orElse("")));
  }

  /** One chart, or as many of about equal height on one axis as it takes to stand on pages. */
  private List<ChartSpec> charts() {
    List<ReadAndModelled.Row> rows = model.rooms().stream().map(this::row).toList();
    double most = 0.1;
    for (ReadAndModelled.Row row : rows) {
      most =
          Math.max(most, Math.max(row.modelled().high(), row.read().map(Range::high).orElse(0.0)));
    }
    Axis axis = Axis.fromZero(most, 5);
    int parts = (rows.size() + MOST_ROWS - 1) / MOST_ROWS;
    List<ChartSpec> charts = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      int from = i * rows.size() / parts;
      int to = (i + 1) * rows.size() / parts;
      charts.add(chart(axis, rows.subList(from, to), i == 0 ? "" : ", continued"));
    }
    return charts;
  }

  private ChartSpec chart(Axis axis, List<ReadAndModelled.Row> rows, String which) {
    String title = "Water in the air of each room beyond that outdoors: read, and by the model";
    return new ReadAndModelled(
        new ChartText(
            title + which,
            desk.numbers().unit(Unit.VAPOUR_CONTENT),
            "Dot: read, with the instruments' errors. Bar: the model, tick at its likely value",
            title + which + ". " + Words.list(rows, TogetherBlocks::said) + "."),
        axis,
        rows);
  }

  private static String said(ReadAndModelled.Row row) {
    return row.label()
        + (row.read().isPresent() ? " " + row.readText() + "," : "")
        + " "
        + row.modelledText();
  }

  private ReadAndModelled.Row row(ModelledRoom room) {
    Numbers numbers = desk.numbers();
    Range modelled = numbers.onAxis(room.modelled().value(), Unit.VAPOUR_CONTENT);
    return new ReadAndModelled.Row(
        Words.capital(Words.shortened(room.roomName(), 34)),
        room.measured().map(m -> numbers.onAxis(m.value(), Unit.VAPOUR_CONTENT)),
        room.measured().map(m -> numbers.plain(m) + Numbers.JOIN + "read").orElse("not read"),
        new Range(Math.max(0, modelled.low()), Math.max(0, modelled.likely()), modelled.high()),
        numbers.plain(room.modelled()) + Numbers.JOIN + "model",
        room.explained());
  }

  /** How much of the water settles on glass, where it shows in print. */
  private Optional<Block> glass() {
    return model
        .glass()
        .filter(
            g ->
                !desk.numbers()
                    .plain(g)
                    .equals(desk.numbers().plain(0, g.unit(), Rounding.NEAREST)))
        .map(
            g ->
                new Prose(
                    desk.notes(List.of(Optional.of(g))),
                    "",
                    "",
                    "Of that water "
                        + desk.numbers().full(g)
                        + " settles on the glass in weather like that of the visit. Wiped up and"
                        + " tipped down a drain it is gone; left to dry it goes back into the"
                        + " air."));
  }

  private Block table() {
    List<FittedUnknown> told = model.unknowns().stream().filter(FittedUnknown::narrowed).toList();
    List<String> untold =
        model.unknowns().stream()
            .filter(u -> !u.narrowed())
            .map(u -> Words.within(u.name()))
            .toList();
    String foot =
        "Bounds hold the value in 95 of 100 cases, if the home is as it is modelled."
            + (untold.isEmpty()
                ? ""
                : " The readings say nothing new of: " + Words.list(untold) + ".");
    List<Optional<Figure>> noted = told.stream().map(u -> Optional.of(u.after())).toList();
    return new Grid(
            desk.notes(noted),
            "What the readings make of what was not known",
            List.of(
                Cells.words("unknown"),
                Cells.words("unit", 16),
                Cells.numbers("before", 30),
                Cells.numbers("with the readings", 32)),
            told.stream().map(this::row).toList(),
            foot)
        .densely();
  }

  private Row row(FittedUnknown unknown) {
    return Cells.row(
        Cells.text(Words.capital(unknown.name())),
        Cells.text(desk.numbers().unit(unknown.after().unit())),
        value(unknown.before()),
        value(unknown.after()));
  }

  /** Air is printed as where it is held against what is asked. */
  private Cell value(Figure figure) {
    Rounding rounding = figure.unit() == Unit.AIRFLOW ? Rounding.DOWN : Rounding.NEAREST;
    return Cells.value(desk.numbers(), figure.value(), figure.unit(), rounding);
  }
}
