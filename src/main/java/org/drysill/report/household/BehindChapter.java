package org.drysill.report.household;

import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;

/** Where the pages for the household or for the file end, and those for a checker begin. */
final class BehindChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    String who = desk.plain() ? "the household" : "the file of the remediation";
    return Optional.of(
        new Section(
            "behind",
            "From here on: for whoever checks the figures",
            "For whoever checks it",
            true,
            List.of(
                new Prose(
                    List.of(),
                    "",
                    "",
                    "The pages up to here are for "
                        + who
                        + " and can stand alone. Those that follow have the same figures in full,"
                        + " with the tables, the working of each and its source. The survey edition"
                        + " of this report, made from the same file, has them in a surveyor's"
                        + " order."))));
  }
}
