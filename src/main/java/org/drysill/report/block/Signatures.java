package org.drysill.report.block;

import java.util.List;

/**
 * Lines to sign on.
 *
 * @param margin notes beside it
 * @param lines who signs on each
 */
public record Signatures(List<Note> margin, List<String> lines) implements Block {
  /** Copies the lists. */
  public Signatures {
    margin = List.copyOf(margin);
    lines = List.copyOf(lines);
  }

  @Override
  public String kind() {
    return "signatures";
  }
}
