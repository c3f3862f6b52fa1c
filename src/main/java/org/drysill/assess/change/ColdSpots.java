package org.drysill.assess.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.SurfaceNow;

/** Compares the places that both visits looked at. */
final class ColdSpots {
  private final VisitFacts before;
  private final VisitFacts after;
  private final Mould mould;

  ColdSpots(VisitFacts before, VisitFacts after, Mould mould) {
    this.before = before;
    this.after = after;
    this.mould = mould;
  }

  List<ColdSpotChange> all() {
    List<ColdSpotChange> all = new ArrayList<>();
    for (ColdPlace place : after.condensation().places()) {
      before.condensation().places().stream()
          .filter(earlier -> earlier.id().equals(place.id()))
          .findFirst()
          .ifPresent(earlier -> all.add(change(earlier, place)));
    }
    return all;
  }

  private ColdSpotChange change(ColdPlace earlier, ColdPlace later) {
    Optional<Figure> marginBefore = margin(earlier, "before");
    Optional<Figure> marginAfter = margin(later, "after");
    Optional<Figure> mouldBefore = mould.before(later.item());
    Optional<Figure> mouldAfter = mould.after(later.item());
    return new ColdSpotChange(
        later.id(),
        later.room(),
        later.name(),
        marginBefore,
        marginAfter,
        mouldBefore,
        mouldAfter,
        marginSaid(marginBefore, marginAfter) + mouldSaid(mouldBefore, mouldAfter));
  }

  /** The margin of that visit under an id of its own. */
  private static Optional<Figure> margin(ColdPlace place, String when) {
    return place.now().map(SurfaceNow::margin).map(figure -> copy(place, when, figure));
  }

  private static Figure copy(ColdPlace place, String when, Figure margin) {
    return new Figure(
        "change.cold_spot." + place.id() + ".margin_" + when,
        "Surface above dew point " + when,
        margin.value(),
        Unit.KELVIN,
        Basis.CALCULATED,
        () ->
            new Working(
                "Tsi − Td",
                List.of(
                    Input.of(
                        "Tsi − Td",
                        "surface less dew point of that visit",
                        margin.value(),
                        Unit.KELVIN,
                        margin.basis())),
                List.of(),
                Optional.empty()));
  }

  private static String marginSaid(Optional<Figure> before, Optional<Figure> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return "Surface and dew point were not both known at both visits.";
    }
    return String.format(
        Locale.ROOT,
        "Surface %s the dew point before, %s after.",
        place(before.get().likely()),
        place(after.get().likely()));
  }

  private static String place(double margin) {
    return String.format(Locale.ROOT, "%.1f K ", Math.abs(margin))
        + (margin < 0 ? "below" : "above");
  }

  private static String mouldSaid(Optional<Figure> before, Optional<Figure> after) {
    if (before.isEmpty() || after.isEmpty()) {
      return "";
    }
    return String.format(
        Locale.ROOT,
        " Mould on %.2f m² before, %.2f m² after.",
        before.get().likely(),
        after.get().likely());
  }
}
