package org.drysill.report.household;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.change.ChangeResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.compared.Statement;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** What changed since the last visit, in plain words; the table stands behind. */
final class SinceChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    return desk.subject().change().map(change -> section(desk, change));
  }

  private static Section section(Desk desk, ChangeResult change) {
    Statement statement = new Statement(change, desk.numbers());
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            desk.notes(List.of(change.home().map(h -> h.excess().change()))),
            "",
            "",
            statement.plain()));
    if (!statement.between().isEmpty()) {
      blocks.add(new Prose(List.of(), "", "In between.", Words.sentence(statement.between())));
    }
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            Words.sentence(change.caution())
                + " Room by room and place by place it stands under “Before and after”."));
    return new Section(
        "since",
        "What changed since " + Words.date(change.before()),
        "Since the last visit",
        false,
        blocks);
  }
}
