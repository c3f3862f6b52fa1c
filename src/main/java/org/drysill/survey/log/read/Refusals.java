package org.drysill.survey.log.read;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.log.LogCode;
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
