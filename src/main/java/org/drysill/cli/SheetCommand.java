package org.drysill.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.drysill.Drysill;
import org.drysill.report.Output;
import org.drysill.report.language.Language;
import org.drysill.report.page.OwnTemplates;
import org.drysill.report.sheet.Sheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the sheet for the people who live in a home. */
@Command(
    name = "sheet",
    description = {
      "Writes a sheet for the people who live in the home, in their language.",
      "It tells how things stand, what is to be done, and what helps until then."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  drysill sheet home/survey.yaml",
      "  drysill sheet home/survey.yaml --language de -o blatt.pdf --html blatt.html"
    })
final class SheetCommand implements Callable<Integer> {
  private final Console console;
  @Mixin private final Talk talk = new Talk();
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "<survey.yaml>", description = "The survey file.")
  private Path survey;

  @Option(
      names = "--language",
      paramLabel = "<tag>",
      defaultValue = "en",
      description = "en or de; otherwise en.")
  private String language;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "<out.pdf>",
      description =
          "Where the PDF goes; otherwise beside the survey, with the ending -sheet-<tag>.pdf.")
  private Path output;

  @Option(names = "--html", paramLabel = "<file>", description = "Also write one HTML file.")
  private Path html;

  @Option(
      names = "--templates",
      paramLabel = "<folder>",
      description =
          "Templates and style sheets of your own, in place of the bundled ones of the same name.")
  private Path templates;

  SheetCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Language chosen =
        Language.of(language)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "no sheet in the language " + language + "; there is " + languages()));
    Path pdf = output == null && Files.isRegularFile(survey) ? beside(chosen) : output;
    if (!new Targets(spec, console).areThere(List.of(survey), pdf, html)) {
      return ExitStatus.MACHINE_FAILED.code();
    }
    return new Attempt(console)
        .making(
            () ->
                made(chosen, templates == null ? OwnTemplates.NONE : OwnTemplates.read(templates)));
  }

  private int made(Language chosen, OwnTemplates own) {
    Drysill.MadeSheet made = Drysill.sheet(survey, chosen, own);
    Surveys.print(console, made.problems(), talk.verbose);
    if (!talk.quiet) {
      Surveys.warn(console, made);
    }
    if (made.sheet().isEmpty()) {
      return ExitStatus.SURVEY_HAS_PROBLEMS.code();
    }
    return new Attempt(console).writing(() -> write(made.sheet().get(), chosen));
  }

  private int write(Sheet sheet, Language chosen) throws IOException {
    Path pdf = output == null ? beside(chosen) : output;
    // Made before anything is written: a template may still turn out to be wrong.
    byte[] page = html == null ? null : sheet.html().getBytes(StandardCharsets.UTF_8);
    Output.write(pdf, sheet.pdf());
    if (page != null) {
      Output.write(html, page);
    }
    if (!talk.quiet) {
      console.say(pdf.toString());
      console.say(sheet.heading());
    }
    return ExitStatus.DONE.code();
  }

  private Path beside(Language chosen) {
    String report = ReportCommand.beside(survey).getFileName().toString();
    String base = report.substring(0, report.length() - ".pdf".length());
    return survey.resolveSibling(base + "-sheet-" + chosen.tag() + ".pdf");
  }

  private static String languages() {
    return String.join(", ", Language.tags());
  }
}
