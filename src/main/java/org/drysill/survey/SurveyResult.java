package org.drysill.survey;

import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Problem;

/**
 * What reading a survey gave.
 *
 * @param file the survey and its files; empty when there was at least one error
 * @param problems every error and warning, those of the survey before those of the earlier one
 * @param day the day of the visit; empty where the survey does not get that far
 */
public record SurveyResult(
    Optional<SurveyFile> file, List<Problem> problems, Optional<VisitDay> day) {
  /** Copies the list. */
  public SurveyResult {
    problems = List.copyOf(problems);
  }

  /** True where nothing keeps the survey from being used. */
  public boolean isUsable() {
    return file.isPresent();
  }
}
