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
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Renders the report of a survey. */
@Command(
    name = "report",
    description = "Renders the report of a survey as a PDF that can be printed and kept.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  drysill report home/survey.yaml",
      "  drysill report home/survey.yaml --edition record",
      "  drysill report home/survey.yaml --edition brief --language de -o bericht.pdf",
      "  drysill report home/survey.yaml --sign me.p12 --sign-password-file secret.txt",
      "  drysill report home/survey.yaml --redact -o share.pdf",
      "  drysill report home/survey.yaml -o out.pdf --json results.json --html report.html"
    })
final class ReportCommand implements Callable<Integer> {
  private final Console console;
  private final Secrets secrets;
  @Mixin private final Talk talk = new Talk();
  @Mixin private final SignOptions sign = new SignOptions();
  @Mixin private final WishOptions wish = new WishOptions();

  @Parameters(paramLabel = "<survey.yaml>", description = "The survey file.")
  private Path survey;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "<out.pdf>",
      description = "Where the PDF goes; otherwise beside the survey, with the ending .pdf.")
  private Path output;

  @Option(names = "--json", paramLabel = "<file>", description = "Also write the results.")
  private Path json;

  @Option(names = "--html", paramLabel = "<file>", description = "Also write one HTML file.")
  private Path html;

  @Spec private CommandSpec spec;

  ReportCommand(Console console, Secrets secrets) {
    this.console = console;
    this.secrets = secrets;
  }

  @Override
  public Integer call() {
    // A survey that is no file is told of as any other fault of a survey.
    Path pdf = output == null && !Files.isRegularFile(survey) ? null : target();
    if (!new Targets(spec, console).areThere(List.of(survey), pdf, json, html)) {
      return ExitStatus.MACHINE_FAILED.code();
    }
    return new Attempt(console).making(() -> made(wish.wishes(), sign.key(secrets)));
  }

  private int made(ReportWishes wishes, Optional<SigningKey> key) throws IOException, KeyRefused {
    StageTimes times = new StageTimes();
    Drysill.Made made = Drysill.report(survey, wishes, times);
    if (talk.verbose) {
      times.lines().forEach(console::say);
    }
    Surveys.print(console, made.problems(), talk.verbose);
    if (!talk.quiet) {
      Surveys.warn(console, made);
    }
    if (made.report().isEmpty()) {
      return ExitStatus.SURVEY_HAS_PROBLEMS.code();
    }
    Report report = made.report().get();
    byte[] signed = sign.signed(report.pdf(), key);
    return new Attempt(console).writing(() -> write(report, signed));
  }

  private int write(Report report, byte[] bytes) throws IOException {
    Path pdf = target();
    new Written(report).to(pdf, bytes, json, html);
    if (!talk.quiet) {
      console.say(pdf.toString());
      console.say(report.verdict());
    }
    return ExitStatus.DONE.code();
  }

  private Path target() {
    return output == null ? beside(survey, wish.redact()) : output;
  }

  /** {@code home/survey.yaml} gives {@code home/survey-share.pdf}, beside the whole report. */
  private static Path beside(Path survey, boolean share) {
    Path whole = beside(survey);
    String name = whole.getFileName().toString();
    return share ? whole.resolveSibling(name.replaceFirst("\\.pdf$", "-share.pdf")) : whole;
  }

  /** {@code home/survey.yaml} gives {@code home/survey.pdf}. */
  static Path beside(Path survey) {
    String name = survey.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return survey.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".pdf");
  }
}
