package org.drysill.report.block;

import java.util.List;

/**
 * Names and values, in two columns.
 *
 * @param margin notes beside it
 * @param items the facts
 */
public record Facts(List<Note> margin, List<Fact> items) implements Block {
  /** Copies the lists. */
  public Facts {
    margin = List.copyOf(margin);
    items = List.copyOf(items);
  }

  @Override
  public String kind() {
    return "facts";
  }
}
