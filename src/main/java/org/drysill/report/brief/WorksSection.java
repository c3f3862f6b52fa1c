package org.drysill.report.brief;

import java.util.Optional;
import org.drysill.report.block.Section;

/**
 * What is to be done, in its order: what comes before all, then the works; cautions beside them.
 */
final class WorksSection implements BriefChapter {
  @Override
  public Optional<Section> write(BriefDesk desk) {
    return Optional.of(new WorksWriting(desk).section());
  }
}
