package org.drysill.report.logged;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.logs.air.AirChangeOfLog;
import org.drysill.assess.logs.air.AirChangeOfLog.Tracer;
import org.drysill.assess.logs.air.LoggedAir;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** The air change of logged rooms beside what they are believed to get. */
final class AirTable {
  private AirTable() {}

  static Optional<Grid> of(Desk desk, LoggedAir air) {
    return air.airChanges().isEmpty() ? Optional.empty() : Optional.of(table(desk, air));
  }

  private static Grid table(Desk desk, LoggedAir air) {
    return Grid.wide(
        title(air),
        List.of(
            Cells.words("room", 32),
            Cells.words("air change by the log, an hour", 32),
            Cells.words("believed", 26),
            Cells.words("what it means")),
        air.airChanges().stream().map(a -> row(desk, a)).toList(),
        "Read from falls of CO₂ and of vapour after people leave or a shower ends. Walls and"
            + " furniture give vapour back, so that vapour gives a bound and no value. Believed is"
            + " the outdoor air of the room in the chapter on ventilation.");
  }

  private static String title(LoggedAir air) {
    List<Finding> less =
        air.airChanges().stream()
            .flatMap(a -> a.believed().stream())
            .filter(f -> f.verdict() == Verdict.SHORT)
            .toList();
    return less.isEmpty()
        ? "The air that the rooms get, by their logs"
        : "By its log a room gets less air than believed";
  }

  private static Row row(Desk desk, AirChangeOfLog air) {
    Numbers numbers = desk.numbers();
    return Cells.row(
        Cells.text(Words.capital(air.roomName()), "by " + air.tracer().word())
            .with(air.airChange().map(f -> List.of(desk.index().mark(f))).orElse(List.of())),
        found(numbers, air),
        Cells.value(numbers, air.believed().flatMap(Finding::required)),
        Cells.text(air.said(), refused(air)));
  }

  private static Cell found(Numbers numbers, AirChangeOfLog air) {
    if (air.airChange().isEmpty()) {
      return Cells.text(Cells.NOTHING);
    }
    Figure found = air.airChange().get();
    return air.tracer() == Tracer.CO2
        ? Cells.value(numbers, found)
        : Cells.text(
            "at least " + numbers.plain(found),
            air.hardlyAbove().map(h -> "hardly above " + numbers.plain(h)).orElse(""));
  }

  /** Such as "12 of 31 falls count; the others: rose again too soon 11, too short 8". */
  private static String refused(AirChangeOfLog air) {
    String count = air.accepted() + " of " + air.looked() + " falls count";
    return air.refused().isEmpty()
        ? count + "."
        : count
            + "; the others: "
            + String.join(
                ", ", air.refused().stream().map(r -> r.reason() + " " + r.count()).toList())
            + ".";
  }
}
