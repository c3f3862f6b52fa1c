package org.drysill.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drysill.Drysill;
import org.drysill.ReportWishes;
import org.drysill.report.Report;
import org.drysill.report.sign.KeyRefused;
import org.drysill.report.sign.SigningKey;
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
      "  drysill compare before.yaml after.yaml -o after.pdf --json results.json",
      "  drysill compare before.yaml after.yaml -o share.pdf --redact",
      "  drysill compare before.yaml after.yaml -o bericht.pdf --edition brief --language de",
      "  drysill compare before.yaml after.yaml -o after.pdf --sign me.p12"
    })
final class CompareCommand implements Callable<Integer> {
  private final Console console;
  private final Secrets secrets;
  @Mixin private final Talk talk = new Talk();
  @Mixin private final SignOptions sign = new SignOptions();
  @Mixin private final WishOptions wish = new WishOptions();
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

  @Option(
      names = "--html",
      paramLabel = "<file>",
      description = "Also write that report as one HTML file.")
  private Path html;

  CompareCommand(Console console, Secrets secrets) {
    this.console = console;
    this.secrets = secrets;
  }

  @Override
  public Integer call() {
    if (isOneFile()) {
      throw new ParameterException(spec.commandLine(), "before and after are the same file");
    }
    if (sign.asked() && output == null) {
      throw new ParameterException(spec.commandLine(), "--sign needs -o: only the PDF is signed");
    }
    if (wish.any() && output == null && json == null && html == null) {
      throw new ParameterException(
          spec.commandLine(),
          "--edition, --language, --redact and --templates are of the report; ask for it with -o or --html");
    }
    if (!new Targets(spec, console).areThere(List.of(before, after), output, json, html)) {
      return ExitStatus.MACHINE_FAILED.code();
    }
    return new Attempt(console).making(() -> compared(wish.wishes(), sign.key(secrets)));
  }

  private int compared(ReportWishes wishes, Optional<SigningKey> key)
      throws IOException, KeyRefused {
    Drysill.Compared compared = Drysill.compare(before, after);
    Surveys.print(console, compared.problems(), talk.verbose);
    if (!talk.quiet) {
      Surveys.warn(console, compared);
    }
    if (compared.visits().isEmpty()) {
      return ExitStatus.SURVEY_HAS_PROBLEMS.code();
    }
    Drysill.Visits visits = compared.visits().get();
    // Asked first, since it refuses a language that the edition has not.
    boolean brief = !visits.tellsChange(wishes);
    if (!talk.quiet) {
      print(visits, compared);
    }
    if (output == null && json == null && html == null) {
      return ExitStatus.DONE.code();
    }
    if (!talk.quiet && brief) {
      console.say("The edition brief tells the later visit alone; what changed stands above.");
    }
    Report report = visits.report(wishes);
    byte[] signed = sign.signed(report.pdf(), key);
    return new Attempt(console).writing(() -> write(report, signed));
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

  private int write(Report report, byte[] pdf) throws IOException {
    new Written(report).to(output, pdf, json, html);
    if (output != null && !talk.quiet) {
      console.say(output.toString());
    }
    return ExitStatus.DONE.code();
  }
}
