package org.drysill.survey;

import java.time.LocalDate;
import java.util.Optional;
import org.drysill.survey.check.CheckList;
import org.drysill.survey.check.SurveyCode;
import org.drysill.yaml.Places;
import org.drysill.yaml.Problem;

/**
 * The day of a visit and its place in the survey. What is read and reported knows no clock, so that
 * the same files give the same report on any day; who knows what day it is asks here.
 *
 * @param date the day
 * @param places where the keys of the survey stand
 */
public record VisitDay(LocalDate date, Places places) {
  /** Where it is tomorrow already while it is today here. */
  private static final int DAYS_AHEAD = 1;

  /** What is odd about a visit that is yet to come; empty for one that is not. */
  public Optional<Problem> problemOn(LocalDate today) {
    if (!date.isAfter(today.plusDays(DAYS_AHEAD))) {
      return Optional.empty();
    }
    CheckList list = new CheckList(places);
    list.add(
        SurveyCode.VISIT_TO_COME, "visit.date", date.toString(), "a day up to today, " + today);
    return list.problems().stream().findFirst();
  }
}
