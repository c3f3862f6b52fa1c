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

/** Cold places before a measure and with it; the worst part of a window stands for it. */
final class SurfaceCompared {
  private final Map<String, ColdPlace> before;
  private final Map<String, ColdPlace> after;

  SurfaceCompared(CondensationResult before, CondensationResult after) {
    this.before = worst(before);
    this.after = worst(after);
  }

  /** The places that are at risk before or afterwards, in the order of the survey. */
  List<SurfaceChange> changes() {
    return before.values().stream()
        .map(this::change)
        .filter(c -> c.monthsBefore() > 0 || c.monthsAfter() > 0)
        .toList();
  }

  /** Months with condensation on glass in a year afterwards, summed over the windows. */
  int wetGlassMonths() {
    return after.values().stream()
        .filter(p -> p.surface() == SurfaceClass.GLASS)
        .mapToInt(SurfaceCompared::months)
        .sum();
  }

  /** Whether walls, corners and reveals are then without mould risk. */
  Verdict opaqueSafe() {
    return opaqueSafe(after);
  }

  private static Verdict opaqueSafe(Map<String, ColdPlace> places) {
    List<ColdPlace> opaque =
        places.values().stream().filter(p -> p.surface() == SurfaceClass.OPAQUE).toList();
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
    ColdPlace then = Optional.ofNullable(after.get(place.item())).orElse(place);
    return new SurfaceChange(
        place.item(),
        place.roomName() + ", " + place.name(),
        place.surface() == SurfaceClass.GLASS,
        months(place),
        months(then));
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
