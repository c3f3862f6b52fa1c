package org.drysill.options.effect;

import java.util.List;
import java.util.stream.Stream;
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

  /** The part of what it could spare that is not taken out already [1]. */
  double open(Candidate candidate) {
    return takesOut(candidate) ? missing(candidate) : 1;
  }

  private Range water(Candidate candidate, MoistureEffect effect) {
    double open = open(candidate);
    Range avoided =
        effect
            .shareAvoided()
            .map(s -> touched(candidate, effect).times(s.range()).times(open))
            .orElse(Range.exactly(0));
    return avoided.plus(removed(effect));
  }

  /** The sources that the effect touches, together, as far as they are believed [kg/s]. */
  private Range touched(Candidate candidate, MoistureEffect effect) {
    return sources(candidate, effect)
        .map(MoistureResult.Item::production)
        .map(Figure::value)
        .reduce(Range.exactly(0), Range::plus)
        .times(believed());
  }

  /**
   * The part of the listed water that is believed [1]: where readings leave less than the sources
   * give together, each of them gives less in proportion, so that none takes more with it than the
   * air holds. Where readings tell of more, what is beyond the list is no listed source's.
   */
  double believed() {
    double listed = moisture.items().stream().mapToDouble(i -> i.production().likely()).sum();
    return listed > all ? all / listed : 1;
  }

  /** The sources that the effect touches. */
  Stream<MoistureResult.Item> sources(Candidate candidate, MoistureEffect effect) {
    return moisture.items().stream()
        .filter(i -> effect.sources().contains(i.kind()))
        .filter(i -> within(candidate, i));
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
        .filter(f -> f.provided().isPresent())
        .filter(f -> f.required().filter(asked -> asked.likely() > 0).isPresent())
        .mapToDouble(MoistureShares::missing)
        .min()
        .orElse(1);
  }

  private static double missing(Finding finding) {
    double provided = finding.provided().orElseThrow().likely();
    return Math.max(0, 1 - provided / finding.required().orElseThrow().likely());
  }

  /**
   * G' / G [1]. What ends a source takes away what that source gives, be it more or less than is
   * likely; the other sources give what they likely do.
   */
  Range left(Candidate candidate, Range water) {
    return candidate.measure().endsSources() ? rest(water) : left(water);
  }

  private Range rest(Range water) {
    double others = Math.max(0, all - water.likely());
    return SteadyZone.ordered(
        rest(others, water.high()), rest(others, water.likely()), rest(others, water.low()));
  }

  private static double rest(double others, double water) {
    return others + water > 0 ? others / (others + water) : 1;
  }

  private Range left(Range water) {
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
