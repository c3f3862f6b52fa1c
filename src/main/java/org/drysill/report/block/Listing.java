package org.drysill.report.block;

import java.util.List;

/**
 * Text as it was read, with the numbers of its lines.
 *
 * @param margin notes beside it
 * @param lines the lines
 */
public record Listing(List<Note> margin, List<Line> lines) implements Block {
  /** Copies the lists. */
  public Listing {
    margin = List.copyOf(margin);
    lines = List.copyOf(lines);
  }

  @Override
  public String kind() {
    return "listing";
  }
}
