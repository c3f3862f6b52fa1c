package org.drysill.report.chapter;

import java.util.Optional;
import org.drysill.report.block.Section;
import org.drysill.report.subject.Desk;

/** Writes one section of the report. */
@FunctionalInterface
public interface Chapter {
  /** The section; empty where there is nothing to say. */
  Optional<Section> write(Desk desk);
}
