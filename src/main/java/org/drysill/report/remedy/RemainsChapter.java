package org.drysill.report.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.options.RankedMeasure;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;
import org.drysill.report.subject.Subject;
import org.drysill.report.table.FindingTable;
import org.drysill.report.verdict.WouldChange;
import org.drysill.report.words.Words;

/** What is still short, what cannot be told yet, and what could be done about it. */
final class RemainsChapter implements Chapter {
  private static final int MOST_ROWS = 12;
  private static final int MOST_READINGS = 6;

  @Override
  public Optional<Section> write(Desk desk) {
    List<Finding> all = compared(desk.subject());
    List<Finding> still = all.stream().filter(f -> f.verdict() == Verdict.SHORT).toList();
    int open = (int) all.stream().filter(f -> f.verdict() == Verdict.UNKNOWN).count();
    List<Block> blocks = new ArrayList<>();
    if (!still.isEmpty()) {
      blocks.add(FindingTable.of(desk, "", still.stream().limit(MOST_ROWS).toList()));
    }
    blocks.add(new Prose(List.of(), "", "", counted(all.size(), still.size(), open)));
    List<String> works =
        desk.subject().options().works().stream().map(RankedMeasure::title).toList();
    if (!works.isEmpty()) {
      blocks.add(
          new Prose(
              List.of(),
              "",
              "What would do most about it.",
              Words.sentence(String.join("; ", works))
                  + " Costs, effects and cautions stand under “What could be done”."));
    }
    List<String> readings = WouldChange.readings(desk).stream().limit(MOST_READINGS).toList();
    if (open > 0 && !readings.isEmpty()) {
      blocks.add(new Subhead(List.of(), "Readings that would settle what cannot be told"));
      blocks.add(new Bullets(List.of(), readings));
    }
    return Optional.of(
        new Section("remains", heading(still.size(), open), "What remains", false, blocks));
  }

  private static List<Finding> compared(Subject subject) {
    return Stream.of(
            subject.ventilation().findings(),
            subject.humidity().findings(),
            subject.condensation().findings(),
            subject.elements().findings(),
            subject.recovery().findings())
        .flatMap(List::stream)
        .toList();
  }

  private static String counted(int all, int still, int open) {
    return "Of "
        + Words.count(all, "comparison", "comparisons")
        + " with published figures at this visit "
        + Words.number(still)
        + " came out short and "
        + Words.number(open)
        + " cannot be told"
        + (still > MOST_ROWS ? "; the first " + Words.number(MOST_ROWS) + " are shown." : ".");
  }

  private static String heading(int still, int open) {
    if (still == 0) {
      return open == 0
          ? "Nothing that was compared is short"
          : "Nothing that was compared is short, and "
              + Words.count(open, "comparison", "comparisons")
              + " cannot be told";
    }
    return Words.capital(Words.count(still, "comparison is", "comparisons are")) + " still short";
  }
}
