package org.drysill.report.block;

import java.util.ArrayList;
import java.util.List;

/**
 * Names and values, in two columns; or two of them side by side across the page.
 *
 * @param margin notes beside it
 * @param items the facts
 * @param wide true where two stand side by side
 */
public record Facts(List<Note> margin, List<Fact> items, boolean wide) implements Block {
  /** What fits beside another. */
  private static final int SHORT = 80;

  /** Copies the lists. */
  public Facts {
    margin = List.copyOf(margin);
    items = List.copyOf(items);
  }

  /** Facts below each other. */
  public Facts(List<Note> margin, List<Fact> items) {
    this(margin, items, false);
  }

  /** Facts in pairs. */
  public static Facts wide(List<Fact> items) {
    return new Facts(List.of(), items, true);
  }

  /** What stands in a row: a fact that is long stands alone, across both columns. */
  public List<List<Fact>> rows() {
    List<List<Fact>> rows = new ArrayList<>();
    List<Fact> open = new ArrayList<>();
    for (Fact fact : items) {
      boolean isShort = wide && fact.value().length() <= SHORT;
      if (!isShort && !open.isEmpty()) {
        rows.add(List.copyOf(open));
        open.clear();
      }
      open.add(fact);
      if (!isShort || open.size() == 2) {
        rows.add(List.copyOf(open));
        open.clear();
      }
    }
    if (!open.isEmpty()) {
      rows.add(List.copyOf(open));
    }
    return rows;
  }

  @Override
  public String kind() {
    return "facts";
  }
}
