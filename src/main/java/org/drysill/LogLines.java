package org.drysill;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.drysill.survey.log.LogFigures;
import org.drysill.survey.log.LogFile;
import org.drysill.survey.log.LogLayout;
import org.drysill.survey.log.LogNote;
import org.drysill.survey.log.Logs;

/** The state of each log in a few lines, for whoever checks a survey. */
final class LogLines {
  private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

  private LogLines() {}

  static List<String> of(Logs logs) {
    List<String> lines = new ArrayList<>();
    logs.rooms().forEach((room, log) -> lines.addAll(of("Log of " + room, log)));
    logs.outdoor().ifPresent(log -> lines.addAll(of("Log of outdoor air", log)));
    logs.cycles().values().forEach(log -> lines.addAll(of("Log of cycles", log)));
    return lines;
  }

  private static List<String> of(String subject, LogFile log) {
    String about = subject + ", " + log.file() + ": ";
    if (log.account().isEmpty()) {
      return List.of(about + "cannot be used; the rest can");
    }
    LogFile.Account content = log.account().get();
    List<String> lines = new ArrayList<>();
    lines.add(about + extent(content.figures(), content.layout().zone()));
    lines.add("  read as " + layout(content.layout()));
    content.quality().notes().forEach(note -> lines.add("  " + note(note)));
    return lines;
  }

  private static String extent(LogFigures figures, ZoneId zone) {
    return figures.rowsRead()
        + " rows, "
        + figures.rowsUsed()
        + " used, "
        + moment(figures.first(), zone)
        + " to "
        + moment(figures.last(), zone)
        + ", mostly "
        + time(figures.medianStepS())
        + " apart";
  }

  private static String layout(LogLayout layout) {
    String columns =
        layout.columns().entrySet().stream()
            .map(column -> column.getKey() + " \"" + column.getValue() + '"')
            .collect(Collectors.joining(", "));
    return columns
        + "; °"
        + layout.temperatureUnit().word()
        + (layout.unitStated() ? "" : " (assumed)")
        + ", clock "
        + layout.zone()
        + (layout.zoneStated() ? "" : " (assumed)");
  }

  private static String note(LogNote note) {
    String lines = note.lines().stream().map(String::valueOf).collect(Collectors.joining(", "));
    return note.count()
        + " x "
        + note.flaw().code()
        + ' '
        + note.flaw().meaning()
        + note.quantity().map(quantity -> " (" + quantity.word() + ')').orElse("")
        + (note.seconds() > 0 ? ", " + time(note.seconds()) + " together" : "")
        + ": "
        + note.flaw().treatment()
        + "; "
        + (note.lines().size() == 1 ? "line " : "lines ")
        + lines
        + (note.count() > note.lines().size() ? ", …" : "");
  }

  private static String moment(Instant at, ZoneId zone) {
    return MOMENT.format(at.atZone(zone));
  }

  private static String time(double seconds) {
    if (seconds < 100) {
      return number(seconds) + " s";
    }
    return seconds < 6000 ? number(seconds / 60) + " min" : number(seconds / 3600) + " h";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.3g", value)
        .replaceFirst("(\\.\\d*?)0+$", "$1")
        .replaceFirst("\\.$", "");
  }
}
