package org.drysill.report.block;

import java.util.List;

/**
 * A heading within a section; it stays with what follows.
 *
 * @param margin notes beside it
 * @param text the heading
 */
public record Subhead(List<Note> margin, String text) implements Block {
  /** Copies the lists. */
  public Subhead {
    margin = List.copyOf(margin);
  }

  @Override
  public String kind() {
    return "subhead";
  }
}
