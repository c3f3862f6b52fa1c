package org.drysill.report.logged;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.logged.LoggedSurface;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** For how long cold surfaces in logged rooms were moist or wet. */
final class SurfaceTable {
  private SurfaceTable() {}

  static Optional<Grid> of(Desk desk) {
    List<LoggedSurface> surfaces = desk.subject().assessment().loggedSurfaces();
    return surfaces.isEmpty() ? Optional.empty() : Optional.of(table(desk, surfaces));
  }

  private static Grid table(Desk desk, List<LoggedSurface> surfaces) {
    return Grid.wide(
        "For how long the cold surfaces of these rooms were moist or wet while the loggers stood"
            + " there",
        List.of(
            Cells.words("surface"),
            Cells.numbers("logged, h", 18),
            Cells.numbers("at or above 80" + Numbers.JOIN + "%, h", 36),
            Cells.numbers("wet, h", 36)),
        surfaces.stream().map(s -> row(desk, s)).toList(),
        "By the temperature factor of each surface and the air indoors and outdoors of the same"
            + " ten minutes or so. A heavy wall follows hours later. Where the bounds are wide, the"
            + " factor is not known well: read the surface again on a cold day.");
  }

  private static Row row(Desk desk, LoggedSurface surface) {
    Cell moist =
        surface.surface() == SurfaceClass.GLASS
            ? Cells.text(Cells.NOTHING)
            : Cells.value(desk.numbers(), surface.moist());
    return Cells.row(
        Cells.text(Words.capital(surface.name()), desk.room(surface.room()))
            .with(List.of(desk.index().mark(surface.wet()))),
        Cells.text(Long.toString(Math.round(surface.loggedHours()))),
        moist,
        Cells.value(desk.numbers(), surface.wet()));
  }
}
