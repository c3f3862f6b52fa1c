package org.drysill.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.drysill.Dated;
import org.drysill.yaml.Problem;
import org.drysill.yaml.ProblemText;

/** Prints what is wrong with surveys. */
final class Surveys {
  private Surveys() {}

  /** Prints errors always and warnings where asked; counts the errors in a last line. */
  static void print(Console console, List<Problem> problems, boolean warningsToo) {
    long errors = problems.stream().filter(p -> p.severity() == Problem.Severity.ERROR).count();
    for (Problem problem : problems) {
      if (warningsToo || problem.severity() == Problem.Severity.ERROR) {
        console.complain(ProblemText.of(problem));
      }
    }
    count(errors).ifPresent(line -> console.complain(console.strong(line)));
  }

  /**
   * Warns of a visit that is yet to come, a slip of the year more often than not.
   *
   * @param of what came out of the survey
   */
  static void warn(Console console, Dated of) {
    of.problemOn(LocalDate.now(ZoneId.systemDefault()))
        .ifPresent(problem -> console.complain(ProblemText.of(problem)));
  }

  /** True where a problem with this code is among them. */
  static boolean has(List<Problem> problems, String code) {
    return problems.stream().anyMatch(p -> p.code().equals(code));
  }

  private static Optional<String> count(long errors) {
    if (errors == 0) {
      return Optional.empty();
    }
    return Optional.of(
        errors == 1 ? "1 error; nothing was written." : errors + " errors; nothing was written.");
  }
}
