package org.drysill.options.rank;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.options.MeasureEffect;
import org.drysill.options.SurfaceChange;
import org.drysill.physics.Range;

/**
 * How far a measure goes towards the two things that every home needs: enough air, and walls,
 * corners and reveals without mould risk. What the home likely has already is no progress.
 *
 * @param effect what the measure does
 */
record Progress(MeasureEffect effect) {

  /** Share of what is open that it closes, likely [1]: the mean of the open ones, else 0. */
  double share() {
    double months = months(walls());
    double lacks = lacksToday();
    double closed =
        (months > 0 ? ended(walls()).likely() / months : 0) + (lacks > 0 ? airClosed() / lacks : 0);
    int open = (months > 0 ? 1 : 0) + (lacks > 0 ? 1 : 0);
    return open == 0 ? 0 : closed / open;
  }

  /** Air that the home likely lacks today [m³/s]. */
  double lacksToday() {
    return effect.lacksToday().map(Figure::likely).orElse(0.0);
  }

  /** How much of it the measure likely closes [m³/s]. */
  double airClosed() {
    return Math.max(0, lacksToday() - effect.lacksAfter().map(Figure::likely).orElse(0.0));
  }

  /** Walls, corners and reveals at risk today. */
  List<SurfaceChange> walls() {
    return effect.surfaces().stream().filter(s -> !s.glass() && s.monthsBefore() > 0).toList();
  }

  /** Windows with condensation today. */
  List<SurfaceChange> glass() {
    return effect.surfaces().stream().filter(s -> s.glass() && s.monthsBefore() > 0).toList();
  }

  /** Months at risk in a year today, summed over places. */
  static int months(List<SurfaceChange> places) {
    return places.stream().mapToInt(SurfaceChange::monthsBefore).sum();
  }

  /** How many of them the measure ends; the ends are those of its effect. */
  static Range ended(List<SurfaceChange> places) {
    return Range.exactly(months(places))
        .minus(
            places.stream().map(SurfaceChange::monthsAfter).reduce(Range.exactly(0), Range::plus));
  }

  /** At how many places no month at risk is likely left. */
  static long resolved(List<SurfaceChange> places) {
    return places.stream().filter(p -> p.monthsAfter().likely() == 0).count();
  }
}
