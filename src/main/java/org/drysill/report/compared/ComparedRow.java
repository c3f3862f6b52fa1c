package org.drysill.report.compared;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.change.shown.Judgement;

/**
 * One thing before and after.
 *
 * @param label what it is
 * @param before what it was
 * @param after what it is now
 * @param change after less before
 * @param judgement whether the change is shown
 * @param figures what stands behind it, for the numbers of their workings
 */
public record ComparedRow(
    String label,
    Value before,
    Value after,
    Value change,
    Judgement judgement,
    List<Figure> figures) {
  /** Copies the list. */
  public ComparedRow {
    figures = List.copyOf(figures);
  }

  /**
   * A number as it is printed.
   *
   * @param text the number, or a dash
   * @param more what an expert asks: a second unit, bounds, a share; may be empty
   */
  public record Value(String text, String more) {
    /** Both in one line. */
    public String line() {
      return more.isEmpty() ? text : text + " (" + more + ")";
    }
  }
}
