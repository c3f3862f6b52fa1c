package org.drysill.physics.tracer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.drysill.physics.tracer.Gaps.Part;
import org.drysill.physics.tracer.Stretch.Ending;
import org.drysill.physics.tracer.TurningPoints.Turn;

/**
 * The falls of a series: from the last reading near a peak, once the air has settled, to whatever
 * comes first of rise, gap, standstill, nearness of the background, end of the log.
 */
final class Falls {
  private final TracerSeries series;
  private final ReadingErrors errors;
  private final Substance substance;
  private final DecayRules rules;
  private final double threshold;

  private Falls(TracerSeries series, ReadingErrors errors, Substance substance, DecayRules rules) {
    this.series = series;
    this.errors = errors;
    this.substance = substance;
    this.rules = rules;
    this.threshold = rules.turn() * errors.reading();
  }

  /**
   * A fall.
   *
   * @param stretch where it lies
   * @param before excess at the trough before the peak; empty where a gap or the start of the log
   *     hides it
   */
  record Fall(Stretch stretch, OptionalDouble before) {}

  static List<Fall> of(
      TracerSeries series, ReadingErrors errors, Substance substance, DecayRules rules) {
    Falls falls = new Falls(series, errors, substance, rules);
    return Gaps.between(series.hours(), rules.longestGapHours()).stream()
        .flatMap(part -> falls.within(part).stream())
        .toList();
  }

  private List<Fall> within(Part part) {
    double[] values = series.excesses();
    List<Turn> turns = TurningPoints.of(values, part.from(), part.to(), threshold);
    List<Fall> falls = new ArrayList<>();
    for (int i = 0; i + 1 < turns.size(); i++) {
      if (turns.get(i).peak()) {
        OptionalDouble before =
            i > 0 ? OptionalDouble.of(values[turns.get(i - 1).index()]) : OptionalDouble.empty();
        int trough = turns.get(i + 1).index();
        Ending ending = i + 2 < turns.size() ? Ending.RISE : ending(part, trough);
        falls.add(fall(turns.get(i).index(), trough, before, ending));
      }
    }
    return falls;
  }

  /** What ends a fall that no rise follows. */
  private Ending ending(Part part, int trough) {
    if (stands(trough, part.to())) {
      return Ending.FLAT;
    }
    return part.to() == series.size() - 1 ? Ending.END_OF_LOG : Ending.GAP;
  }

  private Fall fall(int peak, int trough, OptionalDouble before, Ending ending) {
    int from = settled(peak, trough);
    double level = substance.fallsToLevelBefore() ? before.orElse(0) : 0;
    double lowest = level + rules.floor() * errors.combined();
    int mark = from;
    for (int i = from; i <= trough; i++) {
      if (series.excess(i) < lowest) {
        return new Fall(Stretch.of(series, from, Math.max(from, i - 1), Ending.FLOOR), before);
      }
      if (series.excess(i) <= series.excess(mark) - threshold) {
        mark = i;
      } else if (stands(mark, i)) {
        return new Fall(Stretch.of(series, from, mark, Ending.FLAT), before);
      }
    }
    return new Fall(Stretch.of(series, from, trough, ending), before);
  }

  /** True where more time than one waits for a further fall lies between two readings. */
  private boolean stands(int from, int to) {
    return series.hour(to) - series.hour(from) > rules.patienceHours() + Gaps.ROUNDING_HOURS;
  }

  /** The first reading after the settling time that follows the last one near the peak. */
  private int settled(int peak, int trough) {
    int left = peak;
    for (int i = peak; i <= trough; i++) {
      left = series.excess(i) > series.excess(peak) - threshold ? i : left;
    }
    int from = left;
    double settled = series.hour(left) + rules.settleHours() - Gaps.ROUNDING_HOURS;
    while (from < trough && series.hour(from) < settled) {
      from++;
    }
    return from;
  }
}
