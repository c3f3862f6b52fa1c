package org.drysill.options.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.options.MeasureEffect;
import org.drysill.options.Payback;
import org.drysill.options.SurfaceChange;

/** Why a measure ranks where it does, in sentences. */
final class Reasons {
  private Reasons() {}

  static List<String> of(Entry entry) {
    MeasureEffect effect = entry.costed().studied().effect();
    List<String> reasons = new ArrayList<>();
    if (!entry.admissible()) {
      reasons.add(
          "It ranks behind because an appliance takes its air from the room: a safety test has to"
              + " come before it.");
    }
    reasons.add(air(effect, entry.costed().studied().shortfallClosed()));
    surfaces(effect.surfaces()).ifPresent(reasons::add);
    effect.excessChange().ifPresent(f -> reasons.add(moisture(f)));
    reasons.add(money(entry));
    reasons.add(entry.costed().money().againstNothing().words());
    entry.costed().money().againstSameAir().map(Payback::words).ifPresent(reasons::add);
    return reasons;
  }

  private static String air(MeasureEffect effect, double closed) {
    return switch (effect.enoughAir()) {
      case MEETS -> "With it the home surely has the air that is asked.";
      case UNKNOWN -> "Whether the home then has the air that is asked cannot be told yet.";
      case SHORT ->
          closed > 0
              ? "It closes about " + percent(closed) + " of what the home lacks in air."
              : "It does not add to the air of the home.";
    };
  }

  private static Optional<String> surfaces(List<SurfaceChange> surfaces) {
    int before = surfaces.stream().mapToInt(SurfaceChange::monthsBefore).sum();
    int after = surfaces.stream().mapToInt(SurfaceChange::monthsAfter).sum();
    if (before == 0) {
      return Optional.empty();
    }
    return Optional.of(
        after < before
            ? "Months at risk, summed over all cold places, fall from "
                + before
                + " to "
                + after
                + "."
            : "It takes no month at risk from the cold places.");
  }

  private static String moisture(Figure change) {
    double likely = change.likely();
    return likely <= 0
        ? "The vapour excess of the home falls by about " + percent(-likely) + "."
        : "The vapour excess of the home rises by about " + percent(likely) + ".";
  }

  private static String money(Entry entry) {
    return entry.costed().annualCost().isPresent()
        ? "Its yearly cost over the horizon decides among measures that go as far."
        : "Its cost cannot be told, so it stands behind those whose cost is known.";
  }

  private static String percent(double share) {
    return Math.round(share * 100) + " %";
  }
}
