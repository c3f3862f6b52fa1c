package org.drysill.report.sheet;

import java.util.List;

/**
 * Something to be done.
 *
 * @param title what, without a full stop
 * @param where in which rooms; empty for the whole home
 * @param does what it changes, or why it comes first
 * @param cost what it costs; empty where no price is known
 * @param cautions hazards with what they ask for, each once on a sheet
 */
public record SheetStep(
    String title, String where, String does, String cost, List<SheetCaution> cautions) {
  /** Copies the list. */
  public SheetStep {
    cautions = List.copyOf(cautions);
  }

  /**
   * A hazard.
   *
   * @param hazard what can happen
   * @param ask what is to be done about it
   */
  public record SheetCaution(String hazard, String ask) {}
}
