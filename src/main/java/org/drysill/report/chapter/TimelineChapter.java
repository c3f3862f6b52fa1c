package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Section;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;
import org.drysill.survey.TimelineEvent;
import org.drysill.survey.TimelineEventKind;

/** What happened when: reported, investigated, done, measured again. */
final class TimelineChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<TimelineEvent> events = desk.subject().survey().visit().timeline();
    if (events.isEmpty()) {
      return Optional.empty();
    }
    Grid grid =
        new Grid(
            List.of(),
            "",
            List.of(
                Cells.words("date", 28),
                Cells.words("what happened", 27),
                Cells.words("by", 20),
                Cells.words("note")),
            events.stream()
                .map(
                    e ->
                        Cells.row(
                            Cells.text(Words.date(e.date())),
                            Cells.text(Words.capital(e.event().word())),
                            Cells.text(Words.capital(e.by().orElse(Cells.NOTHING))),
                            Cells.text(e.note().map(Words::sentence).orElse(""))))
                .toList(),
            "As stated in the survey.");
    List<Block> blocks = new ArrayList<>();
    blocks.add(grid);
    blocks.addAll(LimitBlocks.of(desk.subject().timeline()));
    return Optional.of(new Section("timeline", heading(events), "Timeline", false, blocks));
  }

  private static String heading(List<TimelineEvent> events) {
    Optional<TimelineEvent> reported = first(events, TimelineEventKind.REPORTED);
    Optional<TimelineEvent> done = last(events, TimelineEventKind.WORKS_COMPLETED);
    Optional<TimelineEvent> measured = last(events, TimelineEventKind.RE_MEASURED);
    StringBuilder text = new StringBuilder();
    reported.ifPresent(e -> text.append("reported on ").append(Words.date(e.date())));
    done.ifPresent(
        e ->
            text.append(text.isEmpty() ? "" : ", ")
                .append("works completed on ")
                .append(Words.date(e.date())));
    measured.ifPresent(
        e ->
            text.append(text.isEmpty() ? "" : ", ")
                .append("measured again on ")
                .append(Words.date(e.date())));
    return text.isEmpty() ? "What happened when" : Words.capital(text.toString());
  }

  private static Optional<TimelineEvent> first(List<TimelineEvent> all, TimelineEventKind kind) {
    return all.stream().filter(e -> e.event() == kind).findFirst();
  }

  private static Optional<TimelineEvent> last(List<TimelineEvent> all, TimelineEventKind kind) {
    return all.stream().filter(e -> e.event() == kind).reduce((a, b) -> b);
  }
}
