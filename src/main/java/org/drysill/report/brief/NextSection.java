package org.drysill.report.brief;

import java.util.List;
import java.util.Optional;
import org.drysill.options.NextReading;
import org.drysill.options.PackagesResult;
import org.drysill.options.Sureness;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.table.Cells;

/** What to measure next: the readings that take away most of the doubt. */
final class NextSection implements BriefChapter {
  private static final int PERCENT = 100;

  @Override
  public Optional<Section> write(BriefDesk desk) {
    List<NextReading> next = desk.subject().options().next();
    if (next.isEmpty()) {
      return Optional.empty();
    }
    Grid grid =
        Grid.wide(
            "",
            List.of(
                desk.words("next.what", 0),
                desk.words("next.with", 33),
                desk.words("next.when", 38),
                desk.words("next.air", 14),
                desk.words("next.mould", 17),
                desk.words("next.order", 17)),
            next.stream().map(r -> row(desk, r)).toList(),
            desk.say("next.foot"));
    return Optional.of(
        new Section(
            "next",
            desk.say("next.heading"),
            desk.say("next.running"),
            false,
            List.of(grid.densely())));
  }

  private static Row row(BriefDesk desk, NextReading reading) {
    Optional<Sureness.Input> input = input(desk, reading.input());
    String kind = input.map(i -> i.kind().name()).orElse(reading.input());
    String name =
        input
            .flatMap(Sureness.Input::place)
            .map(place -> desk.terms().place(place))
            .orElseGet(
                () -> desk.phrases().find("input." + reading.input()).orElse(reading.input()));
    return Cells.row(
        Cells.text(desk.terms().word("ask", kind, name)),
        Cells.text(desk.terms().word("with", kind, name)),
        Cells.text(desk.terms().word("when", kind, name)),
        share(reading.ofAir()),
        share(reading.ofMould()),
        share(reading.ofRanking()));
  }

  private static Optional<Sureness.Input> input(BriefDesk desk, String id) {
    return desk.subject()
        .options()
        .packages()
        .flatMap(PackagesResult::sureness)
        .flatMap(s -> s.inputs().stream().filter(i -> i.id().equals(id)).findFirst());
  }

  private static Cell share(double share) {
    return Cells.text(share == 0 ? Cells.NOTHING : Math.round(PERCENT * share) + "\u00a0%");
  }
}
