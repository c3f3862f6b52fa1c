package org.drysill.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.drysill.Drysill;
import org.drysill.report.Output;
import org.drysill.report.Report;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what changed in a home from one visit to the next. */
@Command(
    name = "compare",
    description = {
      "Compares two visits to a home on equal terms and says of every change whether it is shown.",
      "The earlier survey given here counts, whatever the later one names."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  drysill compare before.yaml after.yaml",
      "  drysill compare before.yaml after.yaml -o after.pdf --json results.json"
    })
final class CompareCommand implements Callable<Integer> {
  private final Console console;
  @Mixin private final Talk talk = new Talk();
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "<before.yaml>", description = "The earlier survey.")
  private Path before;

  @Parameters(index = "1", paramLabel = "<after.yaml>", description = "The later survey.")
  private Path after;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "<out.pdf>",
      description = "Also write the report of the later visit, with what changed.")
  private Path output;

  @Option(
      names = "--json",
      paramLabel = "<file>",
      description = "Also write the results of the later visit, with what changed.")
  private Path json;

  CompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (isOneFile()) {
      throw new ParameterException(spec.commandLine(), "before and after are the same file");
    }
    Drysill.Compared compared = Drysill.compare(before, after);
    Surveys.print(console, compared.problems(), talk.verbose);
    if (compared.visits().isEmpty()) {
      return ExitStatus.SURVEY_HAS_PROBLEMS.code();
    }
    Drysill.Visits visits = compared.visits().get();
    if (!talk.quiet) {
      print(visits, compared);
    }
    try {
      return write(visits);
    } catch (IOException refused) {
      console.complain("cannot write: " + refused.getMessage());
      return ExitStatus.MACHINE_FAILED.code();
    }
  }

  private boolean isOneFile() {
    try {
      return Files.isSameFile(before, after);
    } catch (IOException notThere) {
      // Which of the two is missing is told when they are read.
      return false;
    }
  }

  private void print(Drysill.Visits visits, Drysill.Compared compared) {
    if (visits.namesNone()) {
      console.say(after + " names no earlier survey; it is compared with " + before + ".");
    } else if (Surveys.has(compared.problems(), "S039")) {
      console.say(
          after + " names another earlier survey; it is compared with " + before + " instead.");
    }
    new CompareText(console, visits.assessment()).print();
  }

  private int write(Drysill.Visits visits) throws IOException {
    if (output == null && json == null) {
      return ExitStatus.DONE.code();
    }
    Report report = visits.report();
    if (output != null) {
      Output.write(output, report.pdf());
    }
    if (json != null) {
      Output.write(json, report.json());
    }
    if (output != null && !talk.quiet) {
      console.say(output.toString());
    }
    return ExitStatus.DONE.code();
  }
}
