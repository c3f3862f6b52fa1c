package org.drysill;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drysill.options.OptionsResult;
import org.drysill.report.Report;
import org.drysill.report.subject.Subject;

/**
 * Reports for tests that look at them. A report is made once, and the options of a home are studied
 * once for all editions and languages of its report: the study knows of neither ({@code
 * ArchitectureTest}), and takes longer than all the rest. That a report made so is the same as one
 * made from the start is held by {@code verify.VerificationTest}, byte for byte.
 */
public final class Reports {
  private static final Lately<Asked, Report> MADE = new Lately<>(16);
  private static final Lately<Home, OptionsResult> STUDIED = new Lately<>(12);

  private Reports() {}

  /** A survey as it reads, for files may change, and what is wished. */
  private record Asked(Path survey, String text, ReportWishes wishes) {}

  /** A survey as it reads, with its names or without them. */
  private record Home(Path survey, String text, boolean shared) {}

  /** The report of one of the example surveys, with nothing wished beyond it. */
  public static Report example(String name) {
    return of(Path.of("example-surveys", name, "survey.yaml"), ReportWishes.NONE);
  }

  /** The report of a survey. */
  public static Report of(Path survey, ReportWishes wishes) {
    return MADE.of(new Asked(survey, text(survey), wishes), () -> made(survey, wishes));
  }

  private static Report made(Path survey, ReportWishes wishes) {
    Input input = input(survey, wishes);
    return Study.compose(visit(input), input.before(), wishes, stage -> {}, study(survey, wishes));
  }

  /** What the report of a survey is about, for tests that look at it before it is pages. */
  public static Subject subject(Path survey, ReportWishes wishes) {
    Input input = input(survey, wishes);
    return Study.studied(visit(input), input.before(), study(survey, wishes));
  }

  private static Input input(Path survey, ReportWishes wishes) {
    return Input.of(survey).as(wishes);
  }

  private static Visit visit(Input input) {
    return input.visit().orElseThrow(() -> new AssertionError("not made: " + input.problems()));
  }

  private static Study.Options study(Path survey, ReportWishes wishes) {
    Home home = new Home(survey, text(survey), wishes.shared());
    return (data, assessment) -> STUDIED.of(home, () -> Study.options(data, assessment));
  }

  private static String text(Path survey) {
    try {
      return Files.readString(survey);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
