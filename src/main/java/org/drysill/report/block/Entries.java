package org.drysill.report.block;

import java.util.List;

/**
 * Entries that are looked up rather than read, in two columns of small type.
 *
 * @param title a sentence above; may be empty
 * @param items the entries
 * @param foot words under it; may be empty
 */
public record Entries(String title, List<Entry> items, String foot) implements Block {
  /** Copies the list. */
  public Entries {
    items = List.copyOf(items);
  }

  /** None: the second column stands where the margin is. */
  @Override
  public List<Note> margin() {
    return List.of();
  }

  @Override
  public String kind() {
    return "entries";
  }
}
