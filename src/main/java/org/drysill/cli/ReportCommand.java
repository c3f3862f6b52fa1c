package org.drysill.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.drysill.Drysill;
import org.drysill.report.Output;
import org.drysill.report.Report;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Renders the report of a survey. */
@Command(
    name = "report",
    description = "Renders the report of a survey as a PDF that can be printed and kept.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  drysill report home/survey.yaml",
      "  drysill report home/survey.yaml -o out.pdf --json results.json --html report.html"
    })
final class ReportCommand implements Callable<Integer> {
  private final Console console;
  @Mixin private final Talk talk = new Talk();

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

  ReportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    StageTimes times = new StageTimes();
    Drysill.Made made = Drysill.report(survey, times);
    if (talk.verbose) {
      times.lines().forEach(console::say);
    }
    Surveys.print(console, made.problems(), talk.verbose);
    if (made.report().isEmpty()) {
      return ExitStatus.SURVEY_HAS_PROBLEMS.code();
    }
    try {
      return write(made.report().get());
    } catch (IOException refused) {
      console.complain("cannot write: " + refused.getMessage());
      return ExitStatus.MACHINE_FAILED.code();
    }
  }

  private int write(Report report) throws IOException {
    Path pdf = output == null ? beside(survey) : output;
    Output.write(pdf, report.pdf());
    if (json != null) {
      Output.write(json, report.json());
    }
    if (html != null) {
      Output.write(html, report.html().getBytes(StandardCharsets.UTF_8));
    }
    if (!talk.quiet) {
      console.say(pdf.toString());
      console.say(report.verdict());
    }
    return ExitStatus.DONE.code();
  }

  /** {@code home/survey.yaml} gives {@code home/survey.pdf}. */
  static Path beside(Path survey) {
    String name = survey.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return survey.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".pdf");
  }
}
