package org.drysill;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.ReferenceData;
import org.drysill.survey.SurveyFile;
import org.drysill.survey.SurveyReader;
import org.drysill.survey.SurveyResult;
import org.drysill.survey.VisitDay;
import org.drysill.survey.share.ShareCopy;
import org.drysill.yaml.Problem;

/**
 * What a run begins with.
 *
 * @param visit the visit; empty when a survey has an error
 * @param before the earlier visit, where one belongs to it
 * @param problems errors and warnings of all files
 * @param day the day of the visit; empty where the survey does not get that far
 */
record Input(
    Optional<Visit> visit, Optional<Visit> before, List<Problem> problems, Optional<VisitDay> day) {
  /** Reads a survey, the earlier one that it names, and what each brings of its own. */
  static Input of(Path file) {
    ReferenceData data = ReferenceData.bundled();
    return of(SurveyReader.read(file, data.vocabularies(), OwnMeasures::words), data);
  }

  /** The same with this earlier survey, whatever the later one names. */
  static Input of(Path file, Path before) {
    ReferenceData data = ReferenceData.bundled();
    return of(SurveyReader.read(file, before, data.vocabularies(), OwnMeasures::words), data);
  }

  /** The same with this earlier survey or none. */
  static Input only(Path file, Optional<Path> before) {
    ReferenceData data = ReferenceData.bundled();
    return before
        .map(earlier -> of(file, earlier))
        .orElseGet(
            () -> of(SurveyReader.readAlone(file, data.vocabularies(), OwnMeasures::words), data));
  }

  private static Input of(SurveyResult read, ReferenceData data) {
    List<Problem> problems = new ArrayList<>(read.problems());
    Optional<Visit> visit = read.file().map(f -> Visit.of(f, data));
    Optional<Visit> before = read.file().flatMap(SurveyFile::previous).map(f -> Visit.of(f, data));
    Stream.of(visit, before)
        .flatMap(Optional::stream)
        .forEach(v -> problems.addAll(v.own().problems()));
    boolean usable =
        Stream.of(visit, before).flatMap(Optional::stream).allMatch(v -> v.own().isUsable());
    return new Input(visit.filter(v -> usable), before, problems, read.day());
  }

  /** With wishes beyond the survey: an edition, a copy to share. */
  Input as(ReportWishes wishes) {
    Optional<Visit> wished = visit.map(v -> v.as(wishes));
    return wishes.shared() && wished.isPresent()
        ? shared(wished.get())
        : new Input(wished, before, problems, day);
  }

  private Input shared(Visit wished) {
    ShareCopy copy = new ShareCopy(wished.file());
    return new Input(
        Optional.of(new Visit(copy.of(wished.file()), wished.own().as(copy))),
        before.map(then -> new Visit(copy.ofEarlier(then.file()), then.own().as(copy))),
        problems,
        day);
  }
}
