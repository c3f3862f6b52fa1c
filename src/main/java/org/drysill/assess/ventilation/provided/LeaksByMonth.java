package org.drysill.assess.ventilation.provided;

import java.util.List;
import org.drysill.assess.Figure;

/**
 * Air through leaks by warmth and wind of each month, beside the rule that divides the test result.
 *
 * @param months twelve months, January first
 * @param coldSeason mean of the cold season by warmth and wind, as air changes [1/h]
 * @param byDivisor by the rule that divides, as air changes [1/h]
 */
public record LeaksByMonth(List<Month> months, Figure coldSeason, Figure byDivisor) {
  /** Copies the list. */
  public LeaksByMonth {
    months = List.copyOf(months);
  }

  /**
   * A month.
   *
   * @param number 1 for January to 12
   * @param airChange air changes [1/h]
   * @param flow the same as a flow [m³/s]
   */
  public record Month(int number, Figure airChange, Figure flow) {}
}
