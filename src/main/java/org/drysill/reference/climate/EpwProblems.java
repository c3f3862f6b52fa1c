package org.drysill.reference.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Place;
import org.drysill.yaml.Problem;

/** Collects the problems of a weather file, up to a number that a person still reads. */
final class EpwProblems {
  private static final int MOST = 20;

  private final String fileName;
  private final List<Problem> problems = new ArrayList<>();

  EpwProblems(String fileName) {
    this.fileName = fileName;
  }

  void add(EpwCode code, Spot spot, String found, String expected) {
    if (problems.size() < MOST) {
      problems.add(problem(code, spot, found, expected));
    } else if (problems.size() == MOST) {
      problems.add(
          problem(EpwCode.TOO_MANY, spot, "more problems from here on", "correct these first"));
    }
  }

  boolean isEmpty() {
    return problems.isEmpty();
  }

  List<Problem> all() {
    return List.copyOf(problems);
  }

  private Problem problem(EpwCode code, Spot spot, String found, String expected) {
    return new Problem(
        code.severity(),
        code.code(),
        new Place(fileName, spot.line(), spot.column()),
        spot.field(),
        found,
        expected,
        Optional.empty(),
        spot.text());
  }

  /**
   * Where in the file.
   *
   * @param line line from 1
   * @param column column from 1
   * @param field name of the field, or empty
   * @param text the line
   */
  record Spot(int line, int column, String field, String text) {}
}
