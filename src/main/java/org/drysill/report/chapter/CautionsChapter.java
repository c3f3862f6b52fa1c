package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.report.block.Block;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Note;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;
import org.drysill.report.working.Sources;

/** Every caution, the gravest first, and the place of the local code. */
final class CautionsChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<ShownCaution> cautions = desk.subject().cautions().shown();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            "This report sets measured and calculated figures beside published ones. It does not"
                + " say whether a home meets any law. Local rules and the judgement of a licensed"
                + " person on the spot come before anything that is printed here. Missing a"
                + " published figure in an existing home is not by itself a breach of it."));
    for (ShownCaution shown : cautions) {
      blocks.add(
          new CautionBlock(
              List.of(
                  Note.led("Why here?", Words.sentence(shown.because())),
                  Note.led("", Sources.of(shown.caution().source()))),
              Words.sentence(shown.caution().hazard()),
              Words.sentence(shown.caution().text())
                  + " "
                  + Words.sentence(shown.caution().ask())));
    }
    String heading =
        cautions.isEmpty()
            ? "Local rules come before this report"
            : Words.capital(Words.count(cautions.size(), "caution", "cautions"))
                + " to read before any work, and the local code";
    return Optional.of(new Section("cautions", heading, "Cautions and local code", false, blocks));
  }
}
