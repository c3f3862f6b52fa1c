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
  /** A column of a page, a line in it [mm], and what a line takes. */
  private static final double COLUMN = 235;

  private static final double LINE = 3.5;
  private static final double LINE_LETTERS = 62;

  /** Copies the list. */
  public Entries {
    items = List.copyOf(items);
  }

  /**
   * True for what a column of a page could take: columns fill from the first on, and the second
   * would stay empty, so that its entries stand side by side.
   */
  public boolean paired() {
    return items.stream().mapToDouble(Entries::height).sum() < COLUMN;
  }

  private static double height(Entry entry) {
    int letters = entry.lead().length() + entry.text().length() + entry.quiet().length();
    return LINE * Math.ceil(letters / LINE_LETTERS);
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
