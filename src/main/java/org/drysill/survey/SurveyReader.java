package org.drysill.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.survey.check.CheckList;
import org.drysill.survey.check.SurveyChecks;
import org.drysill.survey.photo.Picture;
import org.drysill.survey.photo.Pictures;
import org.drysill.yaml.Folder;
import org.drysill.yaml.Problem;
import org.drysill.yaml.Problem.Severity;
import org.drysill.yaml.Reading;
import org.drysill.yaml.RecordReader;
import org.drysill.yaml.TextFile;
import org.drysill.yaml.Vocabularies;

/** The one way in: a survey file, the files that it names, and the earlier survey of the home. */
public final class SurveyReader {
  private static final String OWN_MEASURES = "measures:";

  private final Vocabularies vocabularies;

  private final OwnWords own;

  private SurveyReader(Vocabularies vocabularies, OwnWords own) {
    this.vocabularies = vocabularies;
    this.own = own;
  }

  /** Which words a survey may use besides, for a file of measures of its own. */
  public interface OwnWords {
    /**
     * The words that a survey may use.
     *
     * @param vocabularies the words of the published tables
     * @param measures the text of the file of measures that the survey names
     */
    Vocabularies with(Vocabularies vocabularies, String measures);
  }

  /**
   * Reads a survey and everything that it names.
   *
   * @param file the survey file
   * @param vocabularies the entries of the published tables that a survey may refer to
   * @return the survey, or every problem at once
   */
  public static SurveyResult read(Path file, Vocabularies vocabularies) {
    return read(file, vocabularies, (words, measures) -> words);
  }

  /**
   * The same for a survey that may refer to measures of its own.
   *
   * @param file the survey file
   * @param vocabularies the entries of the published tables that a survey may refer to
   * @param own the words that a file of measures adds to them
   * @return the survey, or every problem at once
   */
  public static SurveyResult read(Path file, Vocabularies vocabularies, OwnWords own) {
    return new SurveyReader(vocabularies, own).read(file, file.toString(), Earlier.NAMED);
  }

  /**
   * Reads a survey and an earlier one that is given, whatever the survey itself names.
   *
   * @param file the survey file
   * @param earlier the file of the earlier survey
   * @param vocabularies the entries of the published tables that a survey may refer to
   * @param own the words that a file of measures adds to them
   * @return the survey with the earlier one, or every problem of both at once
   */
  public static SurveyResult read(
      Path file, Path earlier, Vocabularies vocabularies, OwnWords own) {
    return new SurveyReader(vocabularies, own).read(file, file.toString(), Earlier.given(earlier));
  }

  /**
   * Reads a survey without the earlier one that it may name.
   *
   * @param file the survey file
   * @param vocabularies the entries of the published tables that a survey may refer to
   * @param own the words of the file of measures that it names
   * @return the survey, or every problem at once
   */
  public static SurveyResult readAlone(Path file, Vocabularies vocabularies, OwnWords own) {
    return new SurveyReader(vocabularies, own).read(file, file.toString(), Earlier.NONE);
  }

  private SurveyResult read(Path file, String name, Earlier earlier) {
    TextFile source = TextFile.read(file, name);
    return source
        .text()
        .map(text -> read(file, name, text, source.marked(), earlier))
        .orElseGet(() -> new SurveyResult(Optional.empty(), source.problems(), Optional.empty()));
  }

  private SurveyResult read(Path file, String name, String text, boolean marked, Earlier which) {
    Path folder = Previous.folderOf(file);
    Vocabularies words = words(text, name, folder);
    Reading<Survey> reading = RecordReader.read(Survey.class, text, name, words, Folder.of(folder));
    List<Problem> problems = new ArrayList<>(reading.problems());
    reading
        .draft()
        .ifPresent(
            draft ->
                problems.addAll(
                    SurveyChecks.of(draft, reading.places(), words, reading.problems())));
    CheckList list = new CheckList(reading.places());
    Map<String, byte[]> files =
        reading.value().map(s -> NamedBytes.read(s, folder, list)).orElse(Map.of());
    Map<String, Picture> pictures =
        reading.value().map(s -> Pictures.read(s, files, list)).orElse(Map.of());
    Optional<SurveyResult> previous = previous(reading.draft(), file, name, which, list);
    problems.addAll(list.problems());
    problems.sort(
        Comparator.comparingInt((Problem p) -> p.place().line())
            .thenComparingInt(p -> p.place().column()));
    List<Problem> warnings = warnings(problems);
    previous.ifPresent(p -> problems.addAll(p.problems()));
    boolean usable = problems.size() == warnings(problems).size();
    return new SurveyResult(
        reading
            .value()
            .filter(s -> usable)
            .map(
                s ->
                    new SurveyFile(
                        s,
                        previous.flatMap(SurveyResult::file),
                        name,
                        text,
                        marked,
                        warnings,
                        files,
                        pictures,
                        folder,
                        false)),
        problems,
        reading.draft().map(s -> new VisitDay(s.visit().date(), reading.places())));
  }

  /** With the names of measures that the survey brings itself; looked for only where it may. */
  private Vocabularies words(String text, String name, Path folder) {
    if (!text.contains(OWN_MEASURES)) {
      return vocabularies;
    }
    return RecordReader.read(Survey.class, text, name, Vocabularies.none(), Folder.of(folder))
        .draft()
        .flatMap(Survey::options)
        .flatMap(OptionWishes::measures)
        .flatMap(path -> TextFile.read(folder.resolve(path), path).text())
        .map(measures -> own.with(vocabularies, measures))
        .orElse(vocabularies);
  }

  private Optional<SurveyResult> previous(
      Optional<Survey> survey, Path file, String name, Earlier which, CheckList list) {
    Optional<SurveyResult> result =
        which
            .find(survey, file, name, list)
            .map(earlier -> read(earlier.path(), earlier.name(), Earlier.NONE));
    survey.ifPresent(
        now ->
            result
                .flatMap(SurveyResult::file)
                .map(SurveyFile::survey)
                .ifPresent(
                    then -> {
                      Previous.checkOrder(now, then, list);
                      Previous.checkHome(now, then, list);
                    }));
    return result;
  }

  private static List<Problem> warnings(List<Problem> problems) {
    return problems.stream().filter(p -> p.severity() == Severity.WARNING).toList();
  }
}
