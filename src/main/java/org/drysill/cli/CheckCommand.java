package org.drysill.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.Drysill;
import org.drysill.assess.Assumption;
import org.drysill.assess.Finding;
import org.drysill.report.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says what is wrong with a survey, what had to be assumed, and what reading would help. */
@Command(
    name = "check",
    description = {
      "Says what is wrong with a survey, what had to be assumed, and what to measure next.",
      "It tells what would replace each assumption, which readings would settle what cannot be told"
          + " yet, and how much of the doubt the next reading would take away. Writes nothing."
    },
    mixinStandardHelpOptions = true,
    footer = {"", "Example:", "  drysill check example-surveys/1930s-terrace/survey.yaml"})
final class CheckCommand implements Callable<Integer> {
  private final Console console;
  @Mixin private final Talk talk = new Talk();

  @Parameters(paramLabel = "<survey.yaml>", description = "The survey file.")
  private Path survey;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Drysill.Outcome outcome = Drysill.check(survey);
    Surveys.print(console, outcome.problems(), !talk.quiet);
    if (!talk.quiet) {
      Surveys.warn(console, outcome);
    }
    if (outcome.assessment().isEmpty()) {
      return ExitStatus.SURVEY_HAS_PROBLEMS.code();
    }
    if (!talk.quiet) {
      print(outcome);
    }
    return ExitStatus.DONE.code();
  }

  private void print(Drysill.Outcome outcome) {
    console.say(
        survey
            + ": can be used; "
            + Words.count(outcome.problems().size(), "warning", "warnings")
            + ", "
            + Words.count(outcome.assumptions().size(), "assumption", "assumptions")
            + ", "
            + Words.count(outcome.open().size(), "comparison", "comparisons")
            + " that cannot be told yet");
    outcome.logLines().forEach(line -> console.say("  " + line));
    outcome.assumptions().forEach(this::print);
    settled(outcome.open()).forEach(this::print);
    outcome.open().stream()
        .filter(finding -> finding.settledBy().isEmpty())
        .forEach(this::notAssessed);
    outcome.next().get().forEach(line -> console.say("  " + line));
  }

  private void print(Assumption assumption) {
    console.say(
        "  "
            + console.strong(assumption.about())
            + ": "
            + Stream.of(assumption.assumed(), assumption.why(), assumption.better())
                .filter(told -> !told.isBlank())
                .map(Words::sentence)
                .collect(Collectors.joining(" ")));
  }

  /** What each reading would settle, each reading once. */
  private static Map<String, List<Finding>> settled(List<Finding> open) {
    return open.stream()
        .filter(finding -> finding.settledBy().isPresent())
        .collect(
            Collectors.groupingBy(
                finding -> finding.settledBy().orElseThrow(),
                LinkedHashMap::new,
                Collectors.toList()));
  }

  private void print(String reading, List<Finding> findings) {
    String subjects = findings.stream().map(Finding::subject).collect(Collectors.joining("; "));
    console.say("  " + console.strong("To settle " + subjects) + ": " + reading);
  }

  private void notAssessed(Finding finding) {
    console.say("  " + console.strong("Not told: " + finding.subject()) + ": " + finding.because());
  }
}
