package org.drysill.assess.surfaces;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.surfaces.factor.FactorFinder;
import org.drysill.assess.surfaces.months.Criterion;
import org.drysill.assess.surfaces.months.RiskMonths;
import org.drysill.reference.surfaces.SurfaceTables;

/**
 * The risk of every place of one home, again and again while its rooms or its vapour change.
 *
 * <p>Finds the months that {@link SurfaceAssessor} finds, without words and workings that nobody
 * would read. The temperature factors of a room are kept until the room is another.
 */
public final class RiskAgain {
  private final Home home;
  private final SurfaceTables tables;
  private final Drafts drafts;
  private final IdentityHashMap<RoomFacts, List<Draft>> kept = new IdentityHashMap<>();

  /** For a home as it is: its survey and climate hold for all that it may become. */
  public RiskAgain(Home home, SurfaceTables tables) {
    this.home = home;
    this.tables = tables;
    this.drafts =
        new Drafts(
            new FactorFinder(
                home, tables, new InstrumentErrors(home.survey(), tables.readings().accuracy())),
            tables);
  }

  /**
   * The risk of its places.
   *
   * @param rooms its rooms, some of them changed
   * @param vapour its indoor vapour, as changed
   */
  public List<PlaceRisk> of(List<RoomFacts> rooms, IndoorVapours vapour) {
    VapourOfRooms vapours = new VapourOfRooms(vapour, tables.defaults());
    List<PlaceRisk> risks = new ArrayList<>();
    for (RoomFacts room : rooms) {
      List<Draft> places = kept.computeIfAbsent(room, this::places);
      if (!places.isEmpty()) {
        IndoorVapour air = vapours.of(room);
        places.forEach(place -> risks.add(risk(room, place, air)));
      }
    }
    return risks;
  }

  private List<Draft> places(RoomFacts room) {
    List<Draft> places = new ArrayList<>();
    drafts.each(room, places::add);
    return places;
  }

  private PlaceRisk risk(RoomFacts room, Draft place, IndoorVapour air) {
    Criterion criterion =
        switch (place.surface()) {
          case OPAQUE -> Criterion.opaque(tables);
          case GLASS -> Criterion.glass(tables);
        };
    return new PlaceRisk(
        place.item(),
        room.name() + ", " + place.name(),
        place.surface(),
        RiskMonths.of(
            place.factor().figure().value(),
            room.setpoint().likely(),
            home.climate(),
            air::excessAt,
            criterion,
            tables.defaults()));
  }
}
