package org.drysill.assess.surfaces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.surfaces.RoomLimits.PlaceLimits;
import org.drysill.assess.surfaces.factor.FactorFinder;
import org.drysill.assess.surfaces.months.Criterion;
import org.drysill.assess.surfaces.months.MonthAir;
import org.drysill.assess.surfaces.months.MonthLimit;
import org.drysill.reference.surfaces.SurfaceTables;

/**
 * By what each month's vapour excess of a room may be multiplied until a place of it is at risk, as
 * {@link RiskAgain} would find by trying, at the likely values.
 */
public final class LimitsOfRooms {
  private final Home home;
  private final SurfaceTables tables;
  private final VapourOfRooms vapours;
  private final Drafts drafts;

  /**
   * For a home as it is.
   *
   * @param home the home
   * @param vapour its indoor vapour
   * @param tables what the assessment of surfaces reads
   */
  public LimitsOfRooms(Home home, IndoorVapours vapour, SurfaceTables tables) {
    this.home = home;
    this.tables = tables;
    this.vapours = new VapourOfRooms(vapour, tables.defaults());
    this.drafts =
        new Drafts(
            new FactorFinder(
                home, tables, new InstrumentErrors(home.survey(), tables.readings().accuracy())),
            tables);
  }

  /** The limits of a room, as it is or changed. */
  public RoomLimits of(RoomFacts room) {
    IndoorVapour vapour = vapours.of(room);
    List<PlaceLimits> places = new ArrayList<>();
    drafts.each(room, place -> places.add(place(room, place, vapour)));
    MonthAir winter = winter(room, vapour, 1);
    MonthAir dry = winter(room, vapour, 0);
    double without = dry.indoorHumidity().likely();
    return new RoomLimits(room.id(), places, without, winter.indoorHumidity().likely() - without);
  }

  private PlaceLimits place(RoomFacts room, Draft place, IndoorVapour vapour) {
    Criterion criterion =
        place.surface() == SurfaceClass.GLASS ? Criterion.glass(tables) : Criterion.opaque(tables);
    List<MonthLimit> months =
        home.climate().months().stream()
            .map(m -> MonthLimit.of(m, room.setpoint().likely(), criterion, tables.defaults()))
            .toList();
    return PlaceLimits.of(
        place.item(),
        room.name() + ", " + place.name(),
        place.kind(),
        place.surface(),
        place.material(),
        place.factor().figure().value(),
        months,
        months.stream().map(m -> vapour.excessAt(m.outdoor()).likely()).toList());
  }

  private MonthAir winter(RoomFacts room, IndoorVapour vapour, double times) {
    OutdoorClimate.Month coldest =
        home.climate().months().stream()
            .min(Comparator.comparingDouble(OutdoorClimate.Month::temperature))
            .orElseThrow();
    return MonthAir.of(
        coldest,
        room.setpoint().likely(),
        t -> vapour.excessAt(t).times(times),
        false,
        tables.defaults());
  }
}
