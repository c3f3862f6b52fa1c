package org.drysill;

import java.nio.file.Path;
import org.drysill.report.subject.Subject;

/** What reports are about, for tests that look at them before they are pages. */
public final class Subjects {
  private Subjects() {}

  /** What the report of a survey is about. */
  public static Subject of(Path survey, ReportWishes wishes) {
    Input input = Input.of(survey).as(wishes);
    return Study.studied(input.visit().orElseThrow(), input.before());
  }
}
