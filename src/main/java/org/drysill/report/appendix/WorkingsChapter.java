package org.drysill.report.appendix;

import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Section;
import org.drysill.report.block.WorkingFamily;
import org.drysill.report.block.Workings;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;

/** How each figure that the margin speaks of came about. */
final class WorkingsChapter implements Chapter {
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
                List.of(new Workings(List.of(), families))));
  }
}
