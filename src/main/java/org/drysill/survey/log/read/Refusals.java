package org.drysill.survey.log.read;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.drysill.survey.log.LogCode;
import org.drysill.yaml.FileTrouble;
import org.drysill.yaml.Place;
import org.drysill.yaml.Problem;

/** Words a problem of one log at its line. */
final class Refusals {
  private final String file;
  private final List<String> lines;

  /**
   * For a file.
   *
   * @param lines its first lines, for what is shown of them
   */
  Refusals(String file, List<String> lines) {
    this.file = file;
    this.lines = lines;
  }

  /** A file that is gone, closed, or broken off by the machine. */
  static Problem unreadable(String file, IOException closed) {
    String found = "a file that cannot be read: " + FileTrouble.why(closed);
    return new Refusals(file, List.of())
        .at(1, LogCode.UNREADABLE, found, "a readable file")
        .problem();
  }

  /** A spreadsheet, an archive, a logger's own format. */
  static LogRefused noText(String file) {
    return new Refusals(file, List.of())
        .at(1, LogCode.NOT_TEXT, "a file that is no text", "the log saved or exported as CSV");
  }

  /** Text without rows of readings. */
  LogRefused noTable() {
    return at(
        1,
        LogCode.NO_TABLE,
        "no row with a time and a number",
        "rows with a date and time and readings, separated by one character");
  }

  /** A quotation mark that is never closed. */
  Problem brokenQuotes(long line) {
    return at(
            (int) line,
            LogCode.BROKEN_QUOTES,
            "a row that is never closed; nothing below it was read",
            "a closing quotation mark")
        .problem();
  }

  LogRefused at(int line, LogCode code, String found, String expected) {
    return at(line, code, found, expected, Optional.empty());
  }

  LogRefused at(
      int line, LogCode code, String found, String expected, Optional<String> suggestion) {
    String text = line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
    return new LogRefused(
        new Problem(
            code.severity(),
            code.code(),
            new Place(file, Math.max(1, line), 1),
            "",
            found,
            expected,
            suggestion,
            text));
  }
}
