package org.drysill.options.effect;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Verdict;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.options.SurfaceChange;
import org.drysill.physics.Range;

/**
 * Cold places before a measure and with it; the worst part of a window stands for it.
 *
 * <p>Before and after are compared at the same likely values of factor and vapour: what is not
 * known about a corner is the same on both days. Only the strength of the measure makes a range.
 */
final class SurfaceCompared {
  private final Map<String, ColdPlace> before;
  private final Map<String, ColdPlace> after;
  private final Map<String, ColdPlace> weakest;
  private final Map<String, ColdPlace> strongest;

  /**
   * The surfaces assessed again.
   *
   * @param before as they are
   * @param after with the likely effect and all ranges
   * @param weakest at the weaker end of the effect
   * @param strongest at its stronger end
   */
  SurfaceCompared(
      CondensationResult before,
      CondensationResult after,
      CondensationResult weakest,
      CondensationResult strongest) {
    this.before = worst(before);
    this.after = worst(after);
    this.weakest = worst(weakest);
    this.strongest = worst(strongest);
  }

  /** The places that are at risk before or afterwards, in the order of the survey. */
  List<SurfaceChange> changes() {
    return before.values().stream()
        .map(this::change)
        .filter(c -> c.monthsBefore() > 0 || c.monthsAfter().high() > 0)
        .toList();
  }

  /** Whether walls, corners and reveals are then without mould risk, all ranges at their worst. */
  Verdict opaqueSafe() {
    List<ColdPlace> opaque =
        after.values().stream().filter(p -> p.surface() == SurfaceClass.OPAQUE).toList();
    if (opaque.isEmpty()) {
      return Verdict.UNKNOWN;
    }
    if (opaque.stream().anyMatch(p -> months(p) > 0)) {
      return Verdict.SHORT;
    }
    return opaque.stream().allMatch(p -> p.months().monthsPossiblyAtRisk().isEmpty())
        ? Verdict.MEETS
        : Verdict.UNKNOWN;
  }

  private SurfaceChange change(ColdPlace place) {
    return new SurfaceChange(
        place.item(),
        place.roomName() + ", " + place.name(),
        place.surface() == SurfaceClass.GLASS,
        months(place),
        monthsAfter(place));
  }

  private Range monthsAfter(ColdPlace place) {
    return SteadyZone.ordered(
        months(strongest, place), months(after, place), months(weakest, place));
  }

  private static int months(Map<String, ColdPlace> places, ColdPlace place) {
    return months(Optional.ofNullable(places.get(place.item())).orElse(place));
  }

  private static Map<String, ColdPlace> worst(CondensationResult result) {
    Map<String, ColdPlace> worst = new LinkedHashMap<>();
    Comparator<ColdPlace> byMonths = Comparator.comparingInt(SurfaceCompared::months);
    for (ColdPlace place : result.places()) {
      worst.merge(place.item(), place, (a, b) -> byMonths.compare(a, b) >= 0 ? a : b);
    }
    return worst;
  }

  private static int months(ColdPlace place) {
    return place.months().monthsAtRisk().size();
  }
}
