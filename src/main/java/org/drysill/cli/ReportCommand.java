package org.drysill.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drysill.Drysill;
import org.drysill.ReportWishes;
import org.drysill.report.Output;
import org.drysill.report.Report;
import org.drysill.report.language.Language;
import org.drysill.report.language.LanguageProblem;
import org.drysill.report.page.OwnTemplates;
import org.drysill.report.page.TemplateProblem;
import org.drysill.report.sign.KeyRefused;
import org.drysill.report.sign.Signer;
import org.drysill.report.sign.SigningKey;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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

  @Option(
      names = "--edition",
      paramLabel = "<edition>",
      completionCandidates = Editions.class,
      description =
          "${COMPLETION-CANDIDATES}: for the surveyor, the owner's book, the evidence of a"
              + " remediation, or the results on some ten pages. Otherwise the one that the survey"
              + " names. The figures are the same.")
  private String edition;

  @Option(
      names = "--language",
      paramLabel = "<tag>",
      completionCandidates = Languages.class,
      description =
          "${COMPLETION-CANDIDATES}: the language of the edition brief; otherwise en. The other"
              + " editions are in English.")
  private String language;

  @Option(
      names = "--redact",
      description =
          "Make a copy to share: without names, address, photographs and free words, and without"
              + " the survey inside; the figures are the same.")
  private boolean redact;

  @Option(
      names = "--templates",
      paramLabel = "<folder>",
      description =
          "Templates and style sheets of your own, in place of the bundled ones of the same name.")
  private Path templates;

  @Spec private CommandSpec spec;

  ReportCommand(Console console, Secrets secrets) {
    this.console = console;
    this.secrets = secrets;
  }

  /** The words for the editions. */
  static final class Editions extends ArrayList<String> {
    private static final long serialVersionUID = 1L;

    Editions() {
      super(ReportWishes.editions());
    }
  }

  /** The tags of the languages. */
  static final class Languages extends ArrayList<String> {
    private static final long serialVersionUID = 1L;

    Languages() {
      super(Language.tags());
    }
  }

  private ReportWishes wishes() throws IOException {
    OwnTemplates own = templates == null ? OwnTemplates.NONE : OwnTemplates.read(templates);
    ReportWishes wishes = spoken(ReportWishes.NONE.shared(redact).withTemplates(own));
    if (edition == null) {
      return wishes;
    }
    if (!ReportWishes.editions().contains(edition)) {
      throw new ParameterException(
          spec.commandLine(),
          "no edition " + edition + "; there are " + String.join(", ", ReportWishes.editions()));
    }
    return wishes.withEdition(edition);
  }

  private ReportWishes spoken(ReportWishes wishes) {
    if (language == null) {
      return wishes;
    }
    return wishes.in(
        Language.of(language)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "no report in the language "
                            + language
                            + "; the edition brief is there in "
                            + String.join(", ", Language.tags()))));
  }

  @Override
  public Integer call() {
    try {
      return made(wishes(), sign.key(secrets));
    } catch (TemplateProblem | LanguageProblem wrong) {
      console.complain(wrong.getMessage());
      return ExitStatus.WRONG_USE.code();
    } catch (IOException refused) {
      console.complain("cannot read: " + refused.getMessage());
      return ExitStatus.MACHINE_FAILED.code();
    }
  }

  private int made(ReportWishes wishes, Optional<SigningKey> key) throws IOException {
    StageTimes times = new StageTimes();
    Drysill.Made made = Drysill.report(survey, wishes, times);
    if (talk.verbose) {
      times.lines().forEach(console::say);
    }
    Surveys.print(console, made.problems(), talk.verbose);
    if (made.report().isEmpty()) {
      return ExitStatus.SURVEY_HAS_PROBLEMS.code();
    }
    Report report = made.report().get();
    try {
      return written(report, key.isEmpty() ? report.pdf() : signed(report.pdf(), key.get()));
    } catch (KeyRefused refused) {
      console.complain("the key " + refused.getMessage() + "; nothing was written");
      return ExitStatus.WRONG_USE.code();
    }
  }

  private static byte[] signed(byte[] pdf, SigningKey key) throws IOException, KeyRefused {
    return Signer.sign(pdf, key, Instant.now());
  }

  private int written(Report report, byte[] bytes) {
    try {
      return write(report, bytes);
    } catch (IOException refused) {
      console.complain("cannot write: " + refused.getMessage());
      return ExitStatus.MACHINE_FAILED.code();
    }
  }

  private int write(Report report, byte[] bytes) throws IOException {
    Path pdf = output == null ? beside(survey, redact) : output;
    // Made before anything is written: a template may still turn out to be wrong.
    byte[] page = html == null ? null : report.html().getBytes(StandardCharsets.UTF_8);
    Output.write(pdf, bytes);
    if (json != null) {
      Output.write(json, report.json());
    }
    if (page != null) {
      Output.write(html, page);
    }
    if (!talk.quiet) {
      console.say(pdf.toString());
      console.say(report.verdict());
    }
    return ExitStatus.DONE.code();
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
