package org.drysill.options.packs;

import org.drysill.assess.Figure;
import org.drysill.options.MeasureEffect;
import org.drysill.options.MeasureMoney;
import org.drysill.options.rank.Entry;
import org.drysill.options.site.Candidate;
import org.drysill.reference.measures.AirMove;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.Prerequisite;

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

  /** True where it is about air or water, false where it only makes places warmer. */
  boolean isOfTheAir() {
    return measure().moisture().isPresent() || measure().air().isPresent();
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

  /** True where it acts by itself: on air, on water, on a surface or on a room. */
  boolean acts() {
    return warms()
        || measure().moisture().isPresent()
        || measure().air().filter(a -> a.moves() != AirMove.TRANSFER).isPresent();
  }

  /** True where it brings what another must have before it. */
  boolean brings(Member other) {
    return other.candidate().needs().stream().anyMatch(p -> brings(p, other));
  }

  /** True where it brings one of those at a place in common. */
  boolean brings(Prerequisite need, Member other) {
    return need.by().contains(measure().id())
        && (need.anywhere().orElse(false) || candidate().scope().meets(other.candidate().scope()));
  }

  /** True where it needs what no measure brings. */
  boolean lacks() {
    return candidate().needs().stream().anyMatch(p -> p.by().isEmpty());
  }

  /** True where both cannot be in one package. */
  boolean excludes(Member other) {
    return entry.excludes(other.entry);
  }
}
