package org.drysill.report.logged;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.assess.Unit;
import org.drysill.assess.logs.air.LoggedAir;
import org.drysill.assess.logs.air.RoomEvents;
import org.drysill.physics.tracer.event.EventKind;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** What gave off water, and opened windows, by the shape of rises and falls. */
final class EventTable {
  private EventTable() {}

  static Optional<Grid> of(Desk desk, LoggedAir air) {
    return air.events().isEmpty() ? Optional.empty() : Optional.of(table(desk, air));
  }

  private static Grid table(Desk desk, LoggedAir air) {
    String unit = desk.numbers().unit(Unit.VAPOUR_CONTENT);
    return Grid.wide(
            "What gave off water, by the shape of each rise",
            List.of(
                Cells.words("room"),
                Cells.words("looks like", 50),
                Cells.numbers("times", 16),
                Cells.numbers("a week", 16),
                Cells.numbers("change, " + unit, 24),
                Cells.numbers("over after, h", 22)),
            air.events().stream()
                .flatMap(e -> e.groups().stream().map(g -> row(desk.numbers(), e, g)))
                .toList(),
            "Changes and times are medians. A shape proves no deed: a night of sleep looks like a"
                + " rack of washing. A rise is over when a quarter of it is left.")
        .densely();
  }

  private static Row row(Numbers numbers, RoomEvents room, RoomEvents.Group group) {
    return Cells.row(
        Cells.text(Words.capital(room.roomName())),
        Cells.text(said(group.kind())),
        Cells.text(Integer.toString(group.count())),
        Cells.text(one(group.perWeek())),
        Cells.text(numbers.plain(group.changeKgM3(), Unit.VAPOUR_CONTENT, Rounding.NEAREST)),
        Cells.text(hours(group.recoveryHours())));
  }

  private static String hours(OptionalDouble hours) {
    return hours.isPresent() ? one(hours.getAsDouble()) : Cells.NOTHING;
  }

  private static String one(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** In a few words. */
  static String said(EventKind kind) {
    return switch (kind) {
      case SHOWER -> "showers or baths";
      case COOKING -> "cooking";
      case DRYING_OR_SLEEP -> "washing that dries, or sleep";
      case AIRING -> "open windows";
      case OTHER -> "other";
    };
  }
}
