package org.drysill.report.appendix;

import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Signatures;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.subject.Desk;

/** Lines to sign on, for a report that is filed as evidence. */
final class SignaturesChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    String surveyor =
        desk.subject()
            .survey()
            .visit()
            .surveyor()
            .map(s -> "Readings taken by " + s.name())
            .orElse("Readings taken by");
    return Optional.of(
        new Section(
            "signatures",
            "Signatures",
            "Signatures",
            true,
            List.of(
                new Prose(
                    List.of(),
                    "",
                    "",
                    "Whoever signs confirms the readings, the works or the receipt of this report,"
                        + " and nothing beyond that."),
                new Signatures(
                    List.of(),
                    List.of(
                        surveyor, "Works carried out by", "For the landlord", "Received by")))));
  }
}
