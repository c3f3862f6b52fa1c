package org.drysill.report.block;

import java.util.List;

/**
 * The appendix of workings.
 *
 * @param margin notes beside it
 * @param items the workings in the order of their numbers
 */
public record Workings(List<Note> margin, List<WorkingEntry> items) implements Block {
  /** Copies the lists. */
  public Workings {
    margin = List.copyOf(margin);
    items = List.copyOf(items);
  }

  @Override
  public String kind() {
    return "workings";
  }
}
