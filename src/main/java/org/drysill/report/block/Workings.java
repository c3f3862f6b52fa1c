package org.drysill.report.block;

import java.util.List;

/**
 * The appendix of workings.
 *
 * @param margin notes beside it
 * @param families the workings by formula, in the order of their numbers
 */
public record Workings(List<Note> margin, List<WorkingFamily> families) implements Block {
  /** Copies the lists. */
  public Workings {
    margin = List.copyOf(margin);
    families = List.copyOf(families);
  }

  @Override
  public String kind() {
    return "workings";
  }
}
