package org.drysill.verify;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.Drysill;
import org.drysill.ReportWishes;
import org.drysill.TemplateFiles;
import org.drysill.report.Report;
import org.drysill.report.evidence.InputRole;
import org.drysill.report.evidence.NotAReport;
import org.drysill.report.language.Language;
import org.drysill.report.language.LanguageProblem;
import org.drysill.report.page.TemplateProblem;
import org.drysill.yaml.Problem;

/**
 * A report that was made again from its files.
 *
 * @param report the report; empty where it could not be made
 * @param said why it could not; empty where it could
 */
record Remade(Optional<Report> report, Optional<Statement> said) {
  static Remade of(Claim claim, Sources sources) throws IOException, NotAReport {
    Optional<Claim.Input> survey = claim.only(InputRole.SURVEY);
    if (survey.isEmpty()) {
      return not(Statement.differs("The results name no survey.", List.of()));
    }
    if (!survey.get().inside() && sources.missing().contains(survey.get().name())) {
      return not(
          Statement.notCompared(
              "Figures and pages: what it was made from is not inside, as in a copy to share."));
    }
    if (!sources.missing().isEmpty()) {
      return not(
          new Statement(
              Statement.State.NOT_COMPARED,
              "Figures and pages: files are not inside; --files gives them.",
              sources.missing()));
    }
    try (PrivateFolder folder = new PrivateFolder()) {
      for (Map.Entry<String, byte[]> file : sources.files().entrySet()) {
        folder.write(file.getKey(), file.getValue());
      }
      for (String picture : sources.missingPictures()) {
        folder.write(picture, Placeholder.picture());
      }
      ReportWishes wishes = wishes(claim);
      return again(
          claim.hasTemplates()
              ? wishes.withTemplates(TemplateFiles.in(folder.resolve(".")))
              : wishes,
          folder.resolve(survey.get().name()),
          claim.only(InputRole.EARLIER_SURVEY).map(earlier -> folder.resolve(earlier.name())));
    } catch (TemplateProblem | LanguageProblem wrong) {
      return not(Statement.differs("The files do not make a report.", List.of(wrong.getMessage())));
    }
  }

  /** English is the language of every edition and no wish. */
  private static ReportWishes wishes(Claim claim) {
    ReportWishes wishes = ReportWishes.NONE.withEdition(claim.edition());
    return claim.language() == Language.ENGLISH ? wishes : wishes.in(claim.language());
  }

  private static Remade again(ReportWishes wishes, Path survey, Optional<Path> earlier) {
    Drysill.Made made = Drysill.again(survey, earlier, wishes);
    return made.report().isPresent()
        ? new Remade(made.report(), Optional.empty())
        : not(Statement.differs("The files do not make a report.", errors(made.problems())));
  }

  private static Remade not(Statement why) {
    return new Remade(Optional.empty(), Optional.of(why));
  }

  private static List<String> errors(List<Problem> problems) {
    return problems.stream()
        .filter(problem -> problem.severity() == Problem.Severity.ERROR)
        .map(
            problem ->
                "line "
                    + problem.place().line()
                    + ": found "
                    + problem.found()
                    + ", expected "
                    + problem.expected())
        .toList();
  }
}
