package org.drysill;

import java.time.LocalDate;
import java.util.Optional;
import org.drysill.survey.VisitDay;
import org.drysill.yaml.Problem;

/** What came out of a survey, for who knows what day it is. */
public interface Dated {
  /** The day of the visit; empty where the survey does not get that far. */
  Optional<VisitDay> day();

  /**
   * What is odd about a visit that is yet to come.
   *
   * @param today what day it is; no report depends on it
   */
  default Optional<Problem> problemOn(LocalDate today) {
    return day().flatMap(visit -> visit.problemOn(today));
  }
}
