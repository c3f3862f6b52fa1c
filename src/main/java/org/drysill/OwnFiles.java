package org.drysill;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.MonthlyWeather;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.climate.EpwFile;
import org.drysill.reference.climate.WeatherReading;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.RuleSets;
import org.drysill.survey.ClimateChoice;
import org.drysill.survey.SurveyFile;
import org.drysill.yaml.Problem;
import org.drysill.yaml.Problem.Severity;
import org.drysill.yaml.Reading;

/**
 * What a user brings of his own in the place of bundled data: a rule set, the weather.
 *
 * @param data the bundled data with the own rule set before it, where there is one
 * @param weather months of the own weather file, where there is one
 * @param problems what is wrong with these files
 */
record OwnFiles(ReferenceData data, Optional<MonthlyWeather> weather, List<Problem> problems) {
  OwnFiles {
    problems = List.copyOf(problems);
  }

  /** Reads the files that a survey names; their bytes are in hand already. */
  static OwnFiles read(SurveyFile file, ReferenceData bundled) {
    List<Problem> problems = new ArrayList<>();
    Optional<RuleSet> rules =
        file.survey().dwelling().jurisdiction().file().flatMap(p -> rules(file, p, problems));
    Optional<MonthlyWeather> weather =
        file.survey()
            .dwelling()
            .climate()
            .flatMap(ClimateChoice::file)
            .flatMap(p -> weather(file, p, problems));
    ReferenceData data =
        rules.map(own -> bundled.withRules(bundled.rules().with(own))).orElse(bundled);
    return new OwnFiles(data, weather, problems);
  }

  boolean isUsable() {
    return problems.stream().noneMatch(p -> p.severity() == Severity.ERROR);
  }

  private static Optional<RuleSet> rules(SurveyFile file, String path, List<Problem> problems) {
    Reading<RuleSet> reading = RuleSets.read(text(file, path), path);
    problems.addAll(reading.problems());
    return reading.value();
  }

  private static Optional<MonthlyWeather> weather(
      SurveyFile file, String path, List<Problem> problems) {
    WeatherReading reading = EpwFile.read(text(file, path), path);
    problems.addAll(reading.problems());
    return reading.weather().map(MonthlyWeather::of);
  }

  private static String text(SurveyFile file, String path) {
    return new String(file.files().get(path), StandardCharsets.UTF_8);
  }
}
