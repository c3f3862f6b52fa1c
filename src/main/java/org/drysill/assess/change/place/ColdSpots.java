package org.drysill.assess.change.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.shown.ChangeWords;
import org.drysill.assess.change.shown.OwnId;
import org.drysill.assess.change.visit.VisitFacts;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.SurfaceNow;
import org.drysill.reference.readings.ChangeRules;

/** Compares the places that both visits looked at. */
public final class ColdSpots {
  private final VisitFacts before;
  private final VisitFacts after;
  private final Mould mould;
  private final SameAir sameAir;

  /** Compares the places of two visits, with the air of the rooms of both. */
  public ColdSpots(
      VisitFacts before, VisitFacts after, List<AirChange> rooms, Mould mould, ChangeRules rules) {
    this.sameAir = new SameAir(before, after, rooms, rules);
    this.before = before;
    this.after = after;
    this.mould = mould;
  }

  /** Every place of both visits, in the order of the later survey. */
  public List<ColdSpotChange> all() {
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
    Optional<MouldChange> area = mould.of(later.item());
    Optional<SameAirChange> same = sameAir.change(earlier, later);
    return new ColdSpotChange(
        later.id(),
        later.room(),
        later.name(),
        marginBefore,
        marginAfter,
        same,
        area,
        marginSaid(marginBefore, marginAfter)
            + same.map(ColdSpots::sameSaid).orElseGet(() -> notSaid(earlier, later))
            + area.map(ColdSpots::mouldSaid).orElse(""));
  }

  private String notSaid(ColdPlace earlier, ColdPlace later) {
    return sameAir.isTooWarm(earlier, later)
        ? " It was too warm outdoors at one of the visits to bring both to the same air."
        : "";
  }

  private static Optional<Figure> margin(ColdPlace place, String when) {
    return place
        .now()
        .map(SurfaceNow::margin)
        .map(
            margin ->
                OwnId.of(
                    "change.cold_spot." + place.id() + ".margin_" + when,
                    "Surface above dew point " + when,
                    margin));
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

  private static String sameSaid(SameAirChange same) {
    return String.format(
        Locale.ROOT,
        " At %.0f °C outdoors and %.1f °C in the room: humidity at the surface %s before, %s after.",
        same.outdoor().likely(),
        same.indoor().likely(),
        ChangeWords.percent(same.humidityBefore().likely()),
        ChangeWords.percent(same.humidityAfter().likely()));
  }

  private static String mouldSaid(MouldChange area) {
    return String.format(
        Locale.ROOT,
        " Mould on %.2f m² before, %.2f m² after.",
        area.before().likely(),
        area.after().likely());
  }
}
