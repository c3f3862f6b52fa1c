package org.drysill.report.remedy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;
import org.drysill.survey.SurveyFile;
import org.drysill.survey.TimelineEvent;
import org.drysill.survey.TimelineEventKind;

/** The works, as the timeline names them and as the two surveys show them. */
final class WorksChapter implements Chapter {
  private static final Set<TimelineEventKind> WORKS =
      EnumSet.of(
          TimelineEventKind.MADE_SAFE,
          TimelineEventKind.WORKS_ORDERED,
          TimelineEventKind.WORKS_STARTED,
          TimelineEventKind.WORKS_COMPLETED);

  @Override
  public Optional<Section> write(Desk desk) {
    List<TimelineEvent> events =
        desk.subject().survey().visit().timeline().stream()
            .filter(e -> WORKS.contains(e.event()))
            .toList();
    List<Difference> seen =
        desk.subject()
            .file()
            .previous()
            .map(SurveyFile::survey)
            .map(then -> Differences.between(then, desk.subject().survey(), desk::room))
            .orElse(List.of());
    List<Block> blocks = new ArrayList<>();
    if (!events.isEmpty()) {
      blocks.add(told(events));
    }
    if (!seen.isEmpty()) {
      blocks.add(seen(seen));
    }
    return blocks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("works", heading(events, seen), "Works done", false, blocks));
  }

  private static String heading(List<TimelineEvent> events, List<Difference> seen) {
    if (events.isEmpty()) {
      return "What the two surveys show of works";
    }
    return "The works, as stated" + (seen.isEmpty() ? "" : " and as the two surveys show them");
  }

  private static Grid told(List<TimelineEvent> events) {
    return new Grid(
        List.of(),
        "As the timeline states them",
        List.of(
            Cells.words("date", 28),
            Cells.words("what", 27),
            Cells.words("by", 20),
            Cells.words("in words")),
        events.stream().map(WorksChapter::row).toList(),
        "");
  }

  private static Row row(TimelineEvent event) {
    return Cells.row(
        Cells.text(Words.date(event.date())),
        Cells.text(Words.capital(event.event().word())),
        Cells.text(Words.capital(event.by().orElse(Cells.NOTHING))),
        Cells.text(event.note().map(Words::sentence).orElse(Cells.NOTHING)));
  }

  private static Grid seen(List<Difference> seen) {
    return Grid.wide(
            "As the two surveys show them",
            List.of(
                Cells.words("what"),
                Cells.words("at the earlier visit", 52),
                Cells.words("at this visit", 52)),
            seen.stream()
                .map(
                    d ->
                        Cells.row(
                            Cells.text(d.what()), Cells.text(d.before()), Cells.text(d.after())))
                .toList(),
            "What differs between the surveys; a difference can also be one of looking or of writing"
                + " down.")
        .densely();
  }
}
