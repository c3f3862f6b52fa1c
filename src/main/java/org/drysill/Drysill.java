package org.drysill;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimates;
import org.drysill.assess.home.HomeBuilder;
import org.drysill.reference.Library;
import org.drysill.survey.Survey;
import org.drysill.survey.SurveyReader;
import org.drysill.survey.SurveyResult;
import org.drysill.yaml.Problem;

/** The pipeline. */
public final class Drysill {
  private Drysill() {}

  /** The version of this program; {@code development} where it does not run from its jar. */
  public static String version() {
    return Optional.ofNullable(Drysill.class.getPackage().getImplementationVersion())
        .orElse("development");
  }

  /**
   * Reads a survey and fills its gaps.
   *
   * @param file the survey file
   * @return the home with what had to be assumed, or every problem of the file
   */
  public static Outcome check(Path file) {
    Library library = Library.bundled();
    SurveyResult read = SurveyReader.read(file, library.vocabularies());
    return new Outcome(read.file().map(f -> home(f.survey(), library)), read.problems());
  }

  private static Home home(Survey survey, Library library) {
    OutdoorClimates.Resolved climate =
        OutdoorClimates.resolve(survey, library.climates(), Optional.empty(), Optional.empty());
    return HomeBuilder.build(
        survey,
        climate.climate(),
        climate.assumptions(),
        library.dwelling(),
        library.money(),
        library.tariffs());
  }

  /**
   * What came out.
   *
   * @param home the home; empty when the survey has an error
   * @param problems errors and warnings
   */
  public record Outcome(Optional<Home> home, List<Problem> problems) {
    /** Copies the list. */
    public Outcome {
      problems = List.copyOf(problems);
    }
  }
}
