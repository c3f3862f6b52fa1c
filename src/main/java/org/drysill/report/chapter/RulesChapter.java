package org.drysill.report.chapter;

import java.util.Optional;
import org.drysill.report.block.Section;
import org.drysill.report.rules.RulesPage;
import org.drysill.report.subject.Desk;

/** What other rule sets would ask of the same home, and what quoted air-change figures mean. */
final class RulesChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    return RulesPage.of(desk);
  }
}
