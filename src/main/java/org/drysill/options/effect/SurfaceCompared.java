package org.drysill.options.effect;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Verdict;
import org.drysill.assess.surfaces.PlaceRisk;
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
  private final Map<String, PlaceRisk> before;
  private final Map<String, PlaceRisk> after;
  private final Map<String, PlaceRisk> weakest;
  private final Map<String, PlaceRisk> strongest;

  /**
   * The surfaces assessed again.
   *
   * @param before as they are
   * @param after with the likely effect and all ranges
   * @param weakest at the weaker end of the effect
   * @param strongest at its stronger end
   */
  SurfaceCompared(
      List<PlaceRisk> before,
      List<PlaceRisk> after,
      List<PlaceRisk> weakest,
      List<PlaceRisk> strongest) {
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
    List<PlaceRisk> opaque =
        after.values().stream().filter(p -> p.surface() == SurfaceClass.OPAQUE).toList();
    if (opaque.isEmpty()) {
      return Verdict.UNKNOWN;
    }
    if (opaque.stream().anyMatch(p -> months(p) > 0)) {
      return Verdict.SHORT;
    }
    return opaque.stream().allMatch(p -> p.months().possible() == 0)
        ? Verdict.MEETS
        : Verdict.UNKNOWN;
  }

  private SurfaceChange change(PlaceRisk place) {
    return new SurfaceChange(
        place.item(),
        place.name(),
        place.surface() == SurfaceClass.GLASS,
        months(place),
        monthsAfter(place));
  }

  private Range monthsAfter(PlaceRisk place) {
    return SteadyZone.ordered(
        months(strongest, place), months(after, place), months(weakest, place));
  }

  private static int months(Map<String, PlaceRisk> places, PlaceRisk place) {
    return months(Optional.ofNullable(places.get(place.item())).orElse(place));
  }

  private static Map<String, PlaceRisk> worst(List<PlaceRisk> places) {
    Map<String, PlaceRisk> worst = new LinkedHashMap<>();
    Comparator<PlaceRisk> byMonths = Comparator.comparingInt(SurfaceCompared::months);
    for (PlaceRisk place : places) {
      worst.merge(place.item(), place, (a, b) -> byMonths.compare(a, b) >= 0 ? a : b);
    }
    return worst;
  }

  private static int months(PlaceRisk place) {
    return place.months().likely();
  }
}
