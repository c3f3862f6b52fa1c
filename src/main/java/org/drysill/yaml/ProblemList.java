package org.drysill.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Problem.Severity;

/** Collects the problems of one text. */
final class ProblemList {
  private final Lines lines;
  private final List<Problem> problems = new ArrayList<>();

  ProblemList(Lines lines) {
    this.lines = lines;
  }

  Lines lines() {
    return lines;
  }

  void add(ProblemCode code, Place place, String key, Finding finding) {
    problems.add(
        new Problem(
            code.severity(),
            code.code(),
            place,
            key,
            finding.found(),
            finding.expected(),
            finding.suggestion(),
            lines.line(place.line())));
  }

  boolean hasErrors() {
    return problems.stream().anyMatch(p -> p.severity() == Severity.ERROR);
  }

  /** All of them in the order of the file. */
  List<Problem> inOrder() {
    return problems.stream()
        .distinct()
        .sorted(
            Comparator.comparingInt((Problem p) -> p.place().line())
                .thenComparingInt(p -> p.place().column()))
        .toList();
  }

  /**
   * The words of a problem.
   *
   * @param found what stands there
   * @param expected what would be right
   * @param suggestion what was probably meant
   */
  record Finding(String found, String expected, Optional<String> suggestion) {
    static Finding of(String found, String expected) {
      return new Finding(found, expected, Optional.empty());
    }

    /** Words for a text that is shown in quotation marks, cut where it is long. */
    static Finding quoted(String text, String expected) {
      return of(quote(text), expected);
    }

    Finding meant(Optional<String> word) {
      return new Finding(found, expected, word);
    }

    static String quote(String text) {
      String flat = text.replaceAll("\\s+", " ");
      int end =
          Math.min(
              flat.length(),
              flat.offsetByCodePoints(0, Math.min(60, flat.codePointCount(0, flat.length()))));
      return '"' + flat.substring(0, end) + (end < flat.length() ? "…" : "") + '"';
    }
  }
}
