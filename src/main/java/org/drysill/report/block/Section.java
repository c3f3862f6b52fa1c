package org.drysill.report.block;

import java.util.List;

/**
 * A section of the report.
 *
 * @param id a stable id, for links
 * @param heading its heading, a sentence that carries the finding
 * @param running its name in the running head and the contents
 * @param newPage whether it begins on a new page
 * @param blocks what stands in it
 */
public record Section(
    String id, String heading, String running, boolean newPage, List<Block> blocks) {
  /** Copies the lists. */
  public Section {
    blocks = List.copyOf(blocks);
  }
}
