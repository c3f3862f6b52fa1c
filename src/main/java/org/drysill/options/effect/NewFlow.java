package org.drysill.options.effect;

import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;

/**
 * The flow of a new or mended fan.
 *
 * @param running while it runs [m³/s]
 * @param shareOfDay how long it runs, as a share of the day [1]
 * @param basis on what the running flow rests
 * @param source where it comes from
 * @param asked the extract that is asked of the room for fans of this kind [m³/s], where it is
 *     known
 */
record NewFlow(
    Range running, Range shareOfDay, Basis basis, Citation source, Optional<Double> asked) {
  /** Averaged over time [m³/s]. */
  Range mean() {
    return running.times(shareOfDay);
  }
}
