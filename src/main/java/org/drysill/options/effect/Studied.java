package org.drysill.options.effect;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.options.MeasureEffect;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;

/**
 * A candidate with its effect.
 *
 * @param candidate the measure and its places
 * @param effect its effect for the report
 * @param running the flow of its fan while it runs [m³/s] and its share of the day, where it has
 *     one
 * @param water water less in the air [kg/s]
 * @param shortfallClosed share of today's shortfall of air that it closes [1]; 0 where there is
 *     none
 * @param opaqueMonthsClosed share of the months at risk on walls that it ends [1]; 0 where there
 *     are none
 * @param works whether it has any effect here
 */
public record Studied(
    Candidate candidate,
    MeasureEffect effect,
    Optional<Running> running,
    Range water,
    double shortfallClosed,
    double opaqueMonthsClosed,
    boolean works) {

  /**
   * How a fan runs.
   *
   * @param flow while it runs [m³/s]
   * @param shareOfDay share of the day [1]
   */
  public record Running(Range flow, Range shareOfDay) {}

  /** Air added over time, likely [m³/s]; 0 where none is. */
  public double addedAir() {
    return effect.addedAir().map(Figure::likely).orElse(0.0);
  }
}
