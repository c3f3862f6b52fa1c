package org.drysill.report.brief;

import java.util.Optional;
import org.drysill.report.block.Section;

/** A section of the short report. */
interface BriefChapter {
  /** Writes it; empty where a home has nothing of the kind. */
  Optional<Section> write(BriefDesk desk);
}
