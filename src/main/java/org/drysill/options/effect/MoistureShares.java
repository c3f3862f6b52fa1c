package org.drysill.options.effect;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.reference.measures.AirMove;
import org.drysill.reference.measures.MeasurePlace;
import org.drysill.reference.measures.MoistureEffect;

/**
 * The water that a measure keeps out of the air or takes from it.
 *
 * @param moisture the sources of the home
 * @param extract the extract of today's wet rooms against what is asked
 * @param all the water that the home gives off [kg/s]
 * @param celsius temperature of the air that a machine stands in [°C]
 * @param mostRemoved the most that a machine takes of the water given off [1]
 */
record MoistureShares(
    MoistureResult moisture,
    List<Finding> extract,
    double all,
    double celsius,
    double mostRemoved) {
  private static final double SECONDS_PER_DAY = 86_400;

  /** Water less in the air [kg/s]. */
  Range water(Candidate candidate) {
    return candidate.measure().moisture().map(m -> water(candidate, m)).orElse(Range.exactly(0));
  }

  private Range water(Candidate candidate, MoistureEffect effect) {
    double open = takesOut(candidate) ? missing(candidate) : 1;
    Range avoided =
        effect
            .shareAvoided()
            .map(s -> touched(candidate, effect).times(s.range()).times(open))
            .orElse(Range.exactly(0));
    return avoided.plus(removed(effect));
  }

  /** The sources that the effect touches, together [kg/s]. */
  private Range touched(Candidate candidate, MoistureEffect effect) {
    return moisture.items().stream()
        .filter(i -> effect.sources().contains(i.kind()))
        .filter(i -> within(candidate, i))
        .map(MoistureResult.Item::production)
        .map(Figure::value)
        .reduce(Range.exactly(0), Range::plus);
  }

  /** True for sources of its room; those that are assumed stand in no room and count everywhere. */
  private static boolean within(Candidate candidate, MoistureResult.Item item) {
    return candidate.measure().place() == MeasurePlace.HOME
        || item.room().map(r -> candidate.scope().rooms().contains(r)).orElse(true);
  }

  private static boolean takesOut(Candidate candidate) {
    return candidate
        .measure()
        .air()
        .filter(a -> a.moves() == AirMove.EXTRACT || a.moves() == AirMove.EXCHANGE)
        .isPresent();
  }

  /** Share of the extract asked of its room that is not there today: what a fan there catches. */
  private double missing(Candidate candidate) {
    return extract.stream()
        .filter(f -> f.room().equals(candidate.room().map(RoomFacts::id)))
        .filter(f -> f.provided().isPresent() && f.required().isPresent())
        .mapToDouble(MoistureShares::missing)
        .min()
        .orElse(1);
  }

  private static double missing(Finding finding) {
    double provided = finding.provided().orElseThrow().likely();
    return Math.max(0, 1 - provided / finding.required().orElseThrow().likely());
  }

  /** G' / G [1]. */
  Range left(Range water) {
    return SteadyZone.ordered(left(water.high()), left(water.likely()), left(water.low()));
  }

  private double left(double water) {
    return all > 0 ? Math.max(0, 1 - water / all) : 1;
  }

  private Range removed(MoistureEffect effect) {
    double most = mostRemoved * all;
    return effect
        .removedKgPerDay(celsius)
        .map(r -> r.times(1 / SECONDS_PER_DAY))
        .map(r -> atMost(r, most))
        .orElse(Range.exactly(0));
  }

  private static Range atMost(Range range, double most) {
    return new Range(
        Math.min(range.low(), most), Math.min(range.likely(), most), Math.min(range.high(), most));
  }
}
