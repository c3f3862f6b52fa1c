package org.drysill.report.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Block;
import org.drysill.report.block.Fact;
import org.drysill.report.block.Facts;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.InstrumentTable;
import org.drysill.report.words.Words;
import org.drysill.survey.SurveyFile;
import org.drysill.survey.Surveyor;
import org.drysill.survey.Visit;

/** Who measured at each visit, with what, and when that was calibrated. */
final class MeasuredChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<Block> blocks = new ArrayList<>();
    desk.subject()
        .file()
        .previous()
        .map(SurveyFile::survey)
        .ifPresent(then -> visit(blocks, then.visit()));
    visit(blocks, desk.subject().survey().visit());
    blocks.add(
        new Prose(
            List.of(),
            "small",
            "",
            "The accuracy is what the makers state, as the survey has it; it is in the range of each"
                + " figure. Where none is stated a usual one was taken, and stands among the"
                + " assumptions."));
    return Optional.of(
        new Section("measured", heading(desk), "Who measured with what", false, blocks));
  }

  private static String heading(Desk desk) {
    boolean same =
        desk.subject()
            .file()
            .previous()
            .map(then -> ids(then.survey().visit()))
            .filter(then -> !then.isEmpty())
            .map(then -> then.equals(ids(desk.subject().survey().visit())))
            .orElse(false);
    return same ? "Both visits used the same instruments" : "Who measured, and with what";
  }

  private static List<String> ids(Visit visit) {
    return visit.instruments().stream().map(i -> i.id()).sorted().toList();
  }

  private static void visit(List<Block> blocks, Visit visit) {
    blocks.add(new Subhead(List.of(), "The visit of " + Words.date(visit.date())));
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact("Readings by", visit.surveyor().map(MeasuredChapter::who).orElse("not stated")));
    visit.reference().ifPresent(r -> facts.add(new Fact("Reference", r)));
    blocks.add(new Facts(List.of(), facts));
    if (!visit.instruments().isEmpty()) {
      blocks.add(InstrumentTable.of("", visit.instruments()));
    }
  }

  private static String who(Surveyor surveyor) {
    return surveyor.name()
        + surveyor.qualification().map(q -> ", " + q).orElse("")
        + surveyor.organisation().map(o -> ", " + o).orElse("");
  }
}
