package org.drysill;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.report.language.Language;
import org.drysill.report.language.LanguageProblem;
import org.drysill.report.page.OwnTemplates;
import org.drysill.survey.Edition;
import org.drysill.survey.Survey;
import org.drysill.yaml.Worded;

/**
 * What is asked of a report beyond its survey.
 *
 * @param edition the edition, in the place of the one that the survey names
 * @param language the language; English where none is asked for
 * @param shared true for a copy without names, addresses, photographs and free words
 * @param templates templates in place of the bundled ones
 */
public record ReportWishes(
    Optional<Edition> edition,
    Optional<Language> language,
    boolean shared,
    OwnTemplates templates) {
  /** Nothing beyond the survey. */
  public static final ReportWishes NONE =
      new ReportWishes(Optional.empty(), Optional.empty(), false, OwnTemplates.NONE);

  /** The words for the editions. */
  public static List<String> editions() {
    return Arrays.stream(Edition.values()).map(Worded::word).toList();
  }

  /**
   * The same, with an edition.
   *
   * @param word one of {@link #editions}
   * @throws IllegalArgumentException where it is none of them
   */
  public ReportWishes withEdition(String word) {
    return new ReportWishes(
        Optional.of(Edition.valueOf(word.toUpperCase(Locale.ROOT))), language, shared, templates);
  }

  /** The same, in a language; only the brief edition is written in more than one. */
  public ReportWishes in(Language tongue) {
    return new ReportWishes(edition, Optional.of(tongue), shared, templates);
  }

  /** The same, for a copy that is shared or not. */
  public ReportWishes shared(boolean share) {
    return new ReportWishes(edition, language, share, templates);
  }

  /** The same, with templates of a user's own. */
  public ReportWishes withTemplates(OwnTemplates own) {
    return new ReportWishes(edition, language, shared, own);
  }

  /**
   * The survey with the edition that is wished.
   *
   * @throws LanguageProblem where that edition is not written in the language that is wished
   */
  Survey of(Survey survey) {
    Survey wished = edition.map(e -> survey.with(survey.visit().with(e))).orElse(survey);
    Edition of = wished.visit().edition().orElse(Edition.SURVEY);
    if (language.isPresent() && of != Edition.BRIEF) {
      throw new LanguageProblem(
          "the edition "
              + of.word()
              + " is written in English only; the edition brief is there in "
              + String.join(", ", Language.tags()));
    }
    return wished;
  }

  /** The language of the report. */
  Language spoken() {
    return language.orElse(Language.ENGLISH);
  }
}
