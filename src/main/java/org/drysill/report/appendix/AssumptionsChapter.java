package org.drysill.report.appendix;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Typeset;
import org.drysill.report.words.Words;
import org.drysill.report.working.Sources;

/** What was taken for granted because the survey does not say it. */
final class AssumptionsChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<Assumption> assumptions = desk.found().assumptions();
    if (assumptions.isEmpty()) {
      return Optional.empty();
    }
    Grid grid =
        Grid.wide(
            "",
            List.of(
                Cells.words("about", 34),
                Cells.words("taken as", 36),
                Cells.words("why, and what would be better")),
            assumptions.stream().map(AssumptionsChapter::row).toList(),
            "");
    return Optional.of(
        new Section(
            "assumptions",
            Words.capital(Words.count(assumptions.size(), "thing was", "things were"))
                + " taken for granted",
            "Assumptions",
            false,
            List.of(grid.densely())));
  }

  private static Row row(Assumption assumption) {
    return Cells.row(
        Cells.text(Words.capital(Typeset.of(assumption.about()))),
        Cells.text(Typeset.of(assumption.assumed())),
        Cells.text(
            Typeset.of(
                Words.sentence(assumption.why()) + " " + Words.sentence(assumption.better())),
            Typeset.of(Sources.of(assumption.source()))));
  }
}
