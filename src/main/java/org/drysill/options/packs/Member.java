package org.drysill.options.packs;

import org.drysill.assess.Figure;
import org.drysill.options.MeasureEffect;
import org.drysill.options.MeasureMoney;
import org.drysill.options.rank.Entry;
import org.drysill.options.site.Candidate;
import org.drysill.reference.measures.AirMove;
import org.drysill.reference.measures.Measure;

/**
 * A measure that may be part of packages.
 *
 * @param entry its effect, cost and cautions by itself
 * @param change what it does to air and water
 */
record Member(Entry entry, VapourChange change) {
  Candidate candidate() {
    return entry.costed().studied().candidate();
  }

  Measure measure() {
    return candidate().measure();
  }

  String id() {
    return candidate().id();
  }

  /** True where it changes air or water, false where it only makes places warmer. */
  boolean isOfTheAir() {
    return measure().moisture().isPresent()
        || measure().air().filter(a -> a.moves() != AirMove.TRANSFER).isPresent();
  }

  /** True where it makes a surface or a room warmer. */
  boolean warms() {
    return measure().surface().isPresent() || measure().warmth().isPresent();
  }

  /** What it does by itself. */
  MeasureEffect effect() {
    return entry.costed().studied().effect();
  }

  /** What it costs, takes and saves by itself, likely. */
  Bill bill() {
    MeasureMoney money = entry.costed().money();
    return new Bill(
        entry.firstCost(),
        entry.annualCost(),
        money.runningCost().map(Figure::likely).orElse(0.0),
        money.heatLost().likely() - money.heatSaved().likely(),
        money.electricity().likely(),
        money.co2().likely());
  }

  /** Air that it adds by itself, time-averaged, likely [m³/s]. */
  double addedAir() {
    return entry.costed().studied().addedAir();
  }

  /** True where both cannot be in one package. */
  boolean excludes(Member other) {
    return entry.excludes(other.entry);
  }
}
