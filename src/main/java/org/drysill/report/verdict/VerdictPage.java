package org.drysill.report.verdict;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.report.block.Block;
import org.drysill.report.block.Note;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** Writes the first page. */
public final class VerdictPage {
  private static final String SHARED =
      "names, address, references, photographs, notes and other free words, names of files and the"
          + " survey itself are left out. The figures are those of the whole report.";
  private static final int STEPS = 4;

  private static final int STEP_TEXT = 230;
  private static final int READINGS = 3;

  private VerdictPage() {}

  /** The first page; its blocks fit on one sheet of the smaller paper. */
  public static Section of(Desk desk) {
    State state = State.of(desk.subject());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Prose(notes(desk), "lead", "", Lead.of(desk, state)));
    blocks.add(new Subhead(List.of(), "What we found"));
    blocks.add(FoundTable.of(desk));
    List<Block> steps = ToDo.brief(desk, STEPS, STEP_TEXT);
    if (!steps.isEmpty()) {
      blocks.add(new Subhead(List.of(), "What to do, in this order"));
      blocks.addAll(steps);
    }
    blocks.add(new Subhead(List.of(), "What would change this"));
    blocks.add(new Prose(List.of(), "", "", WouldChange.brief(desk, READINGS)));
    return new Section(
        "verdict", Headline.of(state, desk.subject().edition()), "What we found", false, blocks);
  }

  private static List<Note> notes(Desk desk) {
    Note howSure = Note.led("How sure?", howSure(desk));
    return desk.subject().file().shared()
        ? List.of(Note.led("A copy to share:", SHARED), howSure)
        : List.of(howSure);
  }

  private static String howSure(Desk desk) {
    Figure air = desk.subject().ventilation().provided().wholeHome();
    String basis =
        air.basis() == Basis.MEASURED
            ? "The air rests on measured flows."
            : "The air of the whole home is " + Words.basis(air.basis()) + ", not measured.";
    List<Finding> findings = desk.found().findings();
    long open = findings.stream().filter(f -> f.verdict() == Verdict.UNKNOWN).count();
    return basis
        + " Of "
        + Words.count(findings.size(), "comparison", "comparisons")
        + ", "
        + Words.number((int) open)
        + " cannot be told. Likely value first, lowest and highest in brackets.";
  }
}
