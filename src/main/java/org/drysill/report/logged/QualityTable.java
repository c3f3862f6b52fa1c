package org.drysill.report.logged;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.drysill.assess.logs.LogAccount;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;
import org.drysill.survey.log.LogFigures;
import org.drysill.survey.log.LogNote;

/** What each file held and what was odd about it. */
final class QualityTable {
  private static final int LINES = 3;

  private QualityTable() {}

  static Grid of(List<LogAccount> accounts) {
    return Grid.wide(
            "What the files hold, and what is odd about them",
            List.of(
                Cells.words("log", 44),
                Cells.words("time", 42),
                Cells.words("rows used", 24),
                Cells.words("odd")),
            accounts.stream().map(QualityTable::row).toList(),
            "Nothing is left out without a note here. Where readings lack, no value is made up.")
        .densely();
  }

  private static Row row(LogAccount account) {
    LogFigures figures = account.figures();
    return Cells.row(
        Cells.text(Words.capital(account.name()), account.file()),
        Cells.text(
            date(account, figures.first()) + " to " + date(account, figures.last()),
            account.zone() + (account.zoneStated() ? "" : ", assumed")),
        Cells.text(
            figures.rowsUsed() + " of " + figures.rowsRead(),
            "every " + step(figures.medianStepS())),
        Cells.text(odd(account)));
  }

  private static String date(LogAccount account, Instant at) {
    return at.atZone(ZoneId.of(account.zone())).toLocalDate().toString();
  }

  private static String step(double seconds) {
    return seconds < 90
        ? Math.round(seconds) + " s"
        : String.format(Locale.ROOT, "%.0f min", seconds / 60);
  }

  private static String odd(LogAccount account) {
    return account.notes().isEmpty()
        ? "nothing"
        : Words.sentence(
            String.join("; ", account.notes().stream().map(QualityTable::note).toList()));
  }

  /** Such as "a gap between two rows, twice, 7 h in all (lines 1980, 2022): left open". */
  private static String note(LogNote note) {
    String hours =
        note.seconds() > 0
            ? String.format(Locale.ROOT, ", %.1f h in all", note.seconds() / 3600)
            : "";
    return note.flaw().meaning().toLowerCase(Locale.ROOT).replace("co2", "CO₂")
        + note.quantity().map(q -> " (" + q.word() + ")").orElse("")
        + ", "
        + (note.count() == 1 ? "once" : note.count() + " times")
        + hours
        + (note.lines().isEmpty() ? "" : ", " + lines(note))
        + ": "
        + note.flaw().treatment();
  }

  private static String lines(LogNote note) {
    List<String> some = note.lines().stream().limit(LINES).map(String::valueOf).toList();
    String first = note.count() > LINES ? "first in " : "in ";
    return first + (some.size() == 1 ? "line " : "lines ") + Words.list(some);
  }
}
