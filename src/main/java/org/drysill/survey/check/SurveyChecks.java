package org.drysill.survey.check;

import java.util.List;
import org.drysill.survey.Survey;
import org.drysill.yaml.Places;
import org.drysill.yaml.Problem;
import org.drysill.yaml.Problem.Severity;
import org.drysill.yaml.Vocabularies;

/** Holds the parts of a survey against each other. */
public final class SurveyChecks {
  private SurveyChecks() {}

  /**
   * Every contradiction and oddity of a survey.
   *
   * @param survey the survey, perhaps without optional parts that did not read
   * @param places where its keys stand
   * @param vocabularies the entries of the published tables
   * @param known what is already known to be wrong; nothing is said twice about one key
   */
  public static List<Problem> of(
      Survey survey, Places places, Vocabularies vocabularies, List<Problem> known) {
    CheckList list = new CheckList(places);
    ReferenceChecks.check(survey, list);
    PairChecks.check(survey, list);
    ChoiceChecks.check(survey, list);
    AreaChecks.check(survey, list);
    WindowChecks.check(survey, list);
    TemperatureChecks.check(survey, list);
    DateChecks.check(survey, list);
    WallChecks.check(survey, vocabularies, list);
    FanChecks.check(survey, list);
    MoneyChecks.check(survey, list);
    LoggerChecks.check(survey, list);
    return list.problems().stream().filter(p -> !isTold(p, known)).toList();
  }

  private static boolean isTold(Problem problem, List<Problem> known) {
    return known.stream()
        .filter(k -> k.severity() == Severity.ERROR)
        .anyMatch(k -> !k.key().isEmpty() && isWithin(k.key(), problem.key()));
  }

  private static boolean isWithin(String key, String parent) {
    return key.startsWith(parent)
        && (key.length() == parent.length() || ".[".indexOf(key.charAt(parent.length())) >= 0);
  }
}
