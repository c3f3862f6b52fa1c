package org.drysill;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.drysill.assess.Assessment;
import org.drysill.assess.Assumption;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.Verdict;
import org.drysill.reference.DataFiles;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.climate.NearClimate;
import org.drysill.reference.climate.ReferenceClimate;
import org.drysill.report.Report;
import org.drysill.report.language.Language;
import org.drysill.report.page.OwnTemplates;
import org.drysill.report.sheet.Sheet;
import org.drysill.report.sheet.SheetWriter;
import org.drysill.report.working.Found;
import org.drysill.survey.Edition;
import org.drysill.survey.Survey;
import org.drysill.survey.VisitDay;
import org.drysill.survey.log.Logs;
import org.drysill.yaml.JsonSchema;
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
   * Reads a survey and assesses it.
   *
   * @param file the survey file
   * @return the assessment with what had to be assumed and what stays open, or every problem of the
   *     file
   */
  public static Outcome check(Path file) {
    Input input = Input.of(file);
    Optional<Assessment> assessment =
        input.visit().map(visit -> Study.assess(visit, input.before()));
    return new Outcome(
        assessment,
        input.visit().map(visit -> visit.own().logs()).orElse(Logs.none()),
        input.problems(),
        () ->
            input.visit().flatMap(visit -> assessment.map(a -> NextLines.of(visit, a))).stream()
                .flatMap(List::stream)
                .toList(),
        input.day());
  }

  /** The JSON Schema of surveys. */
  public static String schema() {
    return JsonSchema.of(
        Survey.class, ReferenceData.bundled().vocabularies(), "Survey of a damp home, format 1");
  }

  /** The bundled climates in the order of their ids. */
  public static List<ReferenceClimate> climates() {
    return ReferenceData.bundled().climates().all();
  }

  /**
   * The bundled climates whose position is known, the nearest first.
   *
   * @param latitude of the place, north positive [°]
   * @param longitude of the place, east positive [°]
   */
  public static List<NearClimate> climatesNear(double latitude, double longitude) {
    return ReferenceData.bundled().climates().near(latitude, longitude);
  }

  /**
   * Reads a survey, assesses it, studies what could be done and composes the report.
   *
   * @param file the survey file
   * @return the report, or every problem of the file
   */
  public static Made report(Path file) {
    return report(file, stage -> {});
  }

  /**
   * The same, telling what it is about to do.
   *
   * @param file the survey file
   * @param stages told of each stage as it begins, in one or two words
   */
  public static Made report(Path file, Consumer<String> stages) {
    return report(file, ReportWishes.NONE, stages);
  }

  /**
   * The same, with wishes beyond the survey.
   *
   * @param file the survey file
   * @param wishes which edition, whether to share it, and templates of one's own
   * @param stages told of each stage as it begins, in one or two words
   * @throws org.drysill.report.language.LanguageProblem where the edition is not written in the
   *     language that is wished
   */
  public static Made report(Path file, ReportWishes wishes, Consumer<String> stages) {
    stages.accept("reading");
    Input input = Input.of(file);
    Input wished = input.as(wishes);
    return new Made(
        wished.visit().map(v -> Study.compose(v, wished.before(), wishes, stages)),
        input.problems(),
        input.day());
  }

  /**
   * Reads a survey, assesses it and writes the sheet for the people who live there.
   *
   * @param file the survey file
   * @param language the language of the sheet
   * @return the sheet, or every problem of the file
   */
  public static MadeSheet sheet(Path file, Language language) {
    return sheet(file, language, OwnTemplates.NONE);
  }

  /**
   * The same with templates of one's own.
   *
   * @param file the survey file
   * @param language the language of the sheet
   * @param own the templates
   * @return the sheet, or every problem of the file
   */
  public static MadeSheet sheet(Path file, Language language, OwnTemplates own) {
    Input input = Input.of(file);
    return new MadeSheet(
        input.visit().map(v -> SheetWriter.write(Study.studied(v, input.before()), language, own)),
        input.problems(),
        input.day());
  }

  /**
   * Makes a report again from exactly these files, whatever else the survey names.
   *
   * @param file the survey file
   * @param earlier the earlier survey; empty where none belongs to the report
   * @param wishes what was asked of it beyond the survey
   * @return the report, or every problem of the files
   */
  public static Made again(Path file, Optional<Path> earlier, ReportWishes wishes) {
    Input input = Input.only(file, earlier).as(wishes);
    return new Made(
        input.visit().map(v -> Study.compose(v, input.before(), wishes, stage -> {})),
        input.problems(),
        input.day());
  }

  /** What identifies the bundled data as a whole, SHA-256 in hexadecimal digits. */
  public static String dataDigest() {
    return DataFiles.digest().sha256();
  }

  /**
   * Compares two visits to a home, whatever earlier survey the later one names.
   *
   * @param before the survey file of the earlier visit
   * @param after the survey file of the later visit
   * @return what changed, or every problem of both files
   */
  public static Compared compare(Path before, Path after) {
    Input input = Input.of(after, before);
    return new Compared(
        input.visit().map(visit -> new Visits(visit, input.before())),
        input.problems(),
        input.day());
  }

  /**
   * What came out.
   *
   * @param assessment what the survey means; empty when it has an error
   * @param logs the logs of the visit as they were read
   * @param problems errors and warnings
   * @param next what to measure next, in lines; studied only where it is asked for, since it takes
   *     as long as the rest
   * @param day the day of the visit; empty where the survey does not get that far
   */
  public record Outcome(
      Optional<Assessment> assessment,
      Logs logs,
      List<Problem> problems,
      Supplier<List<String>> next,
      Optional<VisitDay> day)
      implements Dated {
    /** Copies the list. */
    public Outcome {
      problems = List.copyOf(problems);
    }

    /** The home; empty when the survey has an error. */
    public Optional<Home> home() {
      return assessment.map(Assessment::home);
    }

    /** What was taken for granted, each once. */
    public List<Assumption> assumptions() {
      return assessment.map(Assessment::assumptions).orElse(List.of());
    }

    /** The state of each log, in lines. */
    public List<String> logLines() {
      return LogLines.of(logs);
    }

    /** Every finding that cannot be told from what the survey says. */
    public List<Finding> open() {
      return assessment.stream()
          .flatMap(found -> Found.in(List.of(found)).findings().stream())
          .filter(finding -> finding.verdict() == Verdict.UNKNOWN)
          .toList();
    }
  }

  /**
   * Two visits that were read, and what can be made of them.
   *
   * @param visits the visits; empty when one of the surveys has an error
   * @param problems errors and warnings of both
   * @param day the day of the later visit; empty where its survey does not get that far
   */
  public record Compared(Optional<Visits> visits, List<Problem> problems, Optional<VisitDay> day)
      implements Dated {
    /** Copies the list. */
    public Compared {
      problems = List.copyOf(problems);
    }
  }

  /** Two visits to a home. */
  public static final class Visits {
    private final Visit after;
    private final Optional<Visit> before;

    private Visits(Visit after, Optional<Visit> before) {
      this.after = after;
      this.before = before;
    }

    /** The later visit, assessed against the earlier one. */
    public Assessment assessment() {
      return Study.assess(after, before);
    }

    /** The report of the later visit, with what changed. */
    public Report report() {
      return report(ReportWishes.NONE);
    }

    /**
     * The same, with wishes beyond the survey.
     *
     * @param wishes which edition, whether to share it, and templates of one's own
     * @throws org.drysill.report.language.LanguageProblem where the edition is not written in the
     *     language that is wished
     */
    public Report report(ReportWishes wishes) {
      Input wished = new Input(Optional.of(after), before, List.of(), Optional.empty()).as(wishes);
      return Study.compose(wished.visit().orElseThrow(), wished.before(), wishes, stage -> {});
    }

    /** True where the report tells what changed; the brief edition leaves it out. */
    public boolean tellsChange(ReportWishes wishes) {
      return wishes.of(after.file().survey()).visit().edition().orElse(Edition.SURVEY)
          != Edition.BRIEF;
    }

    /** True where the later survey names no earlier one by itself. */
    public boolean namesNone() {
      return after.file().survey().visit().previous().isEmpty();
    }
  }

  /**
   * What came out of a whole run.
   *
   * @param report the report; empty when the survey has an error
   * @param problems errors and warnings
   * @param day the day of the visit; empty where the survey does not get that far
   */
  public record Made(Optional<Report> report, List<Problem> problems, Optional<VisitDay> day)
      implements Dated {
    /** Copies the list. */
    public Made {
      problems = List.copyOf(problems);
    }
  }

  /**
   * What came out of a run for a sheet.
   *
   * @param sheet the sheet; empty when the survey has an error
   * @param problems errors and warnings
   * @param day the day of the visit; empty where the survey does not get that far
   */
  public record MadeSheet(Optional<Sheet> sheet, List<Problem> problems, Optional<VisitDay> day)
      implements Dated {
    /** Copies the list. */
    public MadeSheet {
      problems = List.copyOf(problems);
    }
  }
}
