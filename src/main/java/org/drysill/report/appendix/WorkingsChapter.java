package org.drysill.report.appendix;

import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.WorkingFamily;
import org.drysill.report.block.Workings;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;

/** How each figure that the margin speaks of came about. */
final class WorkingsChapter implements Chapter {
  private static final Prose HOW_TO_READ =
      new Prose(
          List.of(),
          "",
          "",
          "Figures by one formula stand together under it. The first is written"
              + " out. The others leave out what they share with it: words of the name, units,"
              + " what a symbol stands for and on what a value rests. Sources and remarks told at"
              + " an earlier formula are only named as at that one.");

  @Override
  public Optional<Section> write(Desk desk) {
    List<WorkingFamily> families = desk.index().families(desk.numbers());
    return families.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Section(
                "workings",
                "How each figure came about",
                "Workings",
                false,
                List.of(HOW_TO_READ, new Workings(List.of(), families))));
  }
}
