package org.drysill.report.appendix;

import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;
import org.drysill.report.verdict.WouldChange;

/** The readings that would help most, those that settle a verdict first. */
final class ReadingsChapter implements Chapter {
  private static final int MOST = 12;

  @Override
  public Optional<Section> write(Desk desk) {
    List<String> readings = WouldChange.others(desk).stream().limit(MOST).toList();
    String title =
        desk.subject().options().next().isEmpty()
            ? "What to measure next"
            : "What to measure besides the readings of the chapter on what could be done";
    return readings.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Section(
                "readings",
                title,
                "Readings that would help",
                false,
                List.of(new Bullets(List.of(), readings))));
  }
}
