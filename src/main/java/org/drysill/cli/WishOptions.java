package org.drysill.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import org.drysill.ReportWishes;
import org.drysill.report.language.Language;
import org.drysill.report.page.OwnTemplates;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What is wished of a report beyond its survey. */
final class WishOptions {
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

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

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

  /** Whether a copy to share is wished. */
  boolean redact() {
    return redact;
  }

  /** True where any of them is given. */
  boolean any() {
    return edition != null || language != null || redact || templates != null;
  }

  /**
   * All of them.
   *
   * @throws IOException where templates cannot be read
   * @throws ParameterException where there is no such edition or language
   */
  ReportWishes wishes() throws IOException {
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
}
