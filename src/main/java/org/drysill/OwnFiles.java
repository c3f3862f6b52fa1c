package org.drysill;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.MonthlyWeather;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.climate.EpwFile;
import org.drysill.reference.climate.WeatherReading;
import org.drysill.reference.logs.LogFileRules;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.RuleSets;
import org.drysill.survey.ClimateChoice;
import org.drysill.survey.OptionWishes;
import org.drysill.survey.SurveyFile;
import org.drysill.survey.log.LogLimits;
import org.drysill.survey.log.Logs;
import org.drysill.survey.log.read.LogReader;
import org.drysill.survey.share.ShareCopy;
import org.drysill.yaml.Problem;
import org.drysill.yaml.Problem.Severity;
import org.drysill.yaml.Reading;
import org.drysill.yaml.TextFile;

/**
 * What a user brings of his own: a rule set, measures and the weather, in the place of bundled
 * data, and logs.
 *
 * @param data the bundled data with the own rule set and measures before it, where there are such
 * @param weather months of the own weather file, where there is one
 * @param logs the logs of the visit
 * @param problems what is wrong with these files
 */
record OwnFiles(
    ReferenceData data, Optional<MonthlyWeather> weather, Logs logs, List<Problem> problems) {
  OwnFiles {
    problems = List.copyOf(problems);
  }

  /** Reads the files that a survey names; the bytes are in hand already but for those of logs. */
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
    ReferenceData ruled =
        rules.map(own -> bundled.withRules(bundled.rules().with(own))).orElse(bundled);
    ReferenceData data =
        file.survey()
            .options()
            .flatMap(OptionWishes::measures)
            .map(p -> ruled.withMeasures(new OwnMeasures(bundled, problems).read(file, p)))
            .orElse(ruled);
    Logs logs = LogReader.isNeeded(file.survey()) ? logs(file) : Logs.none();
    logs.all().forEach(log -> problems.addAll(log.problems()));
    return new OwnFiles(data, weather, logs, problems);
  }

  /** The same for a copy that is shared. */
  OwnFiles as(ShareCopy copy) {
    return new OwnFiles(data, weather, copy.of(logs), problems);
  }

  boolean isUsable() {
    return problems.stream().noneMatch(p -> p.severity() == Severity.ERROR);
  }

  private static Logs logs(SurveyFile file) {
    return new LogReader(file.folder(), limits(LogFileRules.bundled())).read(file.survey());
  }

  private static LogLimits limits(LogFileRules rules) {
    LogFileRules.Believed believed = rules.believed();
    return new LogLimits(
        rules.hold().steps(),
        hours(rules.hold().longestHours()),
        rules.clock().setAfter().atStartOfDay(ZoneOffset.UTC).toInstant(),
        Duration.ofDays(1).toSeconds() * rules.clock().farJumpDays(),
        Duration.ofMinutes(1).toSeconds() * rules.clock().blockJumpMinutes(),
        believed.temperature().low(),
        believed.temperature().high(),
        believed.humidity().high() - 1,
        believed.humidity().low(),
        believed.saturatedFrom().value(),
        believed.co2().low(),
        believed.co2().high(),
        rules.spike().temperature().value(),
        rules.spike().humidity().value(),
        rules.spike().co2().value(),
        hours(rules.stuck().hours()),
        rules.doubtfulUnit().above().value());
  }

  private static double hours(double hours) {
    return Duration.ofHours(1).toSeconds() * hours;
  }

  private static Optional<RuleSet> rules(SurveyFile file, String path, List<Problem> problems) {
    TextFile source = TextFile.decode(file.files().get(path), path);
    problems.addAll(source.problems());
    return source.text().flatMap(text -> rules(text, path, problems));
  }

  private static Optional<RuleSet> rules(String text, String path, List<Problem> problems) {
    Reading<RuleSet> reading = RuleSets.read(text, path);
    problems.addAll(reading.problems());
    return reading.value();
  }

  private static Optional<MonthlyWeather> weather(
      SurveyFile file, String path, List<Problem> problems) {
    // Whatever the encoding: its figures are plain, and only names of places may look odd.
    String text = new String(file.files().get(path), StandardCharsets.UTF_8);
    WeatherReading reading = EpwFile.read(text, path);
    problems.addAll(reading.problems());
    return reading.weather().map(MonthlyWeather::of);
  }
}
