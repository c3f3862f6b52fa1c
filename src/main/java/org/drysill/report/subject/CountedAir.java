package org.drysill.report.subject;

import org.drysill.assess.Figure;
import org.drysill.assess.ventilation.VentilationResult;
import org.drysill.reference.rules.Counts;

/**
 * The air that the governing rule set counts, so that every page holds the same against what is
 * asked.
 *
 * @param provided the air
 * @param words what it is, such as {@code outdoor air by fans}
 */
public record CountedAir(Figure provided, String words) {
  /** The air of a home. */
  public static CountedAir of(Subject subject) {
    VentilationResult air = subject.ventilation();
    Figure provided = air.wholeHome().provided().orElse(air.provided().wholeHome());
    boolean fans = air.rules().governing().counts() == Counts.FANS_ONLY;
    return new CountedAir(provided, fans ? "outdoor air by fans" : "outdoor air");
  }
}
