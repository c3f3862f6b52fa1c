package org.drysill.report.block;

import java.util.List;

/**
 * A paragraph.
 *
 * @param margin notes beside it
 * @param style how it is set: {@code lead}, {@code small} or empty
 * @param lead its first words, printed bold; may be empty
 * @param text the rest
 */
public record Prose(List<Note> margin, String style, String lead, String text) implements Block {
  /** Copies the lists. */
  public Prose {
    margin = List.copyOf(margin);
  }

  @Override
  public String kind() {
    return "prose";
  }
}
