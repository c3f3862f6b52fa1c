package org.drysill.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.drysill.Drysill;
import org.drysill.assess.Assumption;
import org.drysill.assess.Home;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says what is wrong with a survey, what had to be assumed, and what reading would help. */
@Command(
    name = "check",
    description = {
      "Says what is wrong with a survey, what had to be assumed, and what would replace it.",
      "Writes nothing."
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
    if (outcome.home().isEmpty()) {
      return ExitStatus.SURVEY_HAS_PROBLEMS.code();
    }
    if (!talk.quiet) {
      print(outcome.home().get(), outcome.problems().size());
    }
    return ExitStatus.DONE.code();
  }

  private void print(Home home, int warnings) {
    List<Assumption> assumptions = home.assumptions();
    console.say(
        survey
            + ": can be used; "
            + warnings
            + " warnings, "
            + assumptions.size()
            + " assumptions");
    for (Assumption assumption : assumptions) {
      console.say(
          "  "
              + console.strong(assumption.about())
              + ": "
              + assumption.assumed()
              + ". "
              + assumption.why()
              + " "
              + assumption.better());
    }
  }
}
