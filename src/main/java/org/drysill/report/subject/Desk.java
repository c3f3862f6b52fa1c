package org.drysill.report.subject;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.report.block.Note;
import org.drysill.report.photo.PhotoIndex;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.UnitSystem;
import org.drysill.report.words.Words;
import org.drysill.report.working.Found;
import org.drysill.report.working.PrintedFigures;
import org.drysill.report.working.WorkingIndex;
import org.drysill.survey.Edition;

/**
 * What every chapter is written with.
 *
 * @param subject what the report is about
 * @param found the figures, findings and assumptions in it
 * @param numbers numbers in the units of its readers
 * @param index the numbers of the workings
 * @param printed the figures that these numbers put into words
 * @param photos the photographs with their numbers
 */
public record Desk(
    Subject subject,
    Found found,
    Numbers numbers,
    WorkingIndex index,
    PrintedFigures printed,
    PhotoIndex photos) {
  /** A desk for a report. */
  public static Desk of(Subject subject) {
    Found found = Found.in(subject.results());
    WorkingIndex index = new WorkingIndex(found);
    PrintedFigures printed = new PrintedFigures(found, index);
    return new Desk(
        subject,
        found,
        numbers(subject.assessment()).heardBy(printed),
        index,
        printed,
        PhotoIndex.of(subject.file()));
  }

  /** Numbers in the units of the jurisdiction and the currency of the survey. */
  public static Numbers numbers(Assessment assessment) {
    UnitSystem system =
        switch (assessment.ventilation().rules().units()) {
          case METRIC -> UnitSystem.METRIC;
          case METRIC_HOURLY -> UnitSystem.METRIC_HOURLY;
          case INCH_POUND -> UnitSystem.CUSTOMARY;
        };
    return new Numbers(system, assessment.home().money().currency());
  }

  /** True where the reader is no expert. */
  public boolean plain() {
    return subject.edition() == Edition.RECORD;
  }

  /** A note in the margin that leads to a figure's working and says on what it rests. */
  public Note note(Figure figure) {
    return note(figure, figure.name());
  }

  /** A note in the margin that leads to a figure's working, with words of its own. */
  public Note note(Figure figure, String text) {
    String basis = figure.basis() == Basis.CALCULATED ? "" : ", " + Words.basis(figure.basis());
    return Note.working(index.mark(figure), text + basis + ".");
  }

  /** Notes for figures, each working once. */
  public List<Note> notes(List<Optional<Figure>> figures) {
    Map<String, Note> notes = new LinkedHashMap<>();
    figures.stream()
        .flatMap(Optional::stream)
        .forEach(f -> notes.putIfAbsent(index.mark(f), note(f)));
    return List.copyOf(notes.values());
  }

  /** The name of a room in sentences. */
  public String room(String id) {
    return subject.home().room(id).map(RoomFacts::name).orElse(id);
  }
}
