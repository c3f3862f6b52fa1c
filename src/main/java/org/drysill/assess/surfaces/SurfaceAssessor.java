package org.drysill.assess.surfaces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.assess.surfaces.factor.FactorFinder;
import org.drysill.assess.surfaces.factor.TemperatureFactor;
import org.drysill.reference.surfaces.FilmUse;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.Wall;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;

/** Assesses every cold spot, window and built-up wall of a home. */
public final class SurfaceAssessor {
  private final Home home;
  private final SurfaceTables tables;
  private final VapourOfRooms vapour;
  private final InstrumentErrors errors;
  private final FactorFinder factors;
  private final PlaceBuilder builder;

  private SurfaceAssessor(Home home, IndoorVapours vapour, SurfaceTables tables) {
    this.home = home;
    this.tables = tables;
    this.vapour = new VapourOfRooms(vapour, tables.defaults());
    this.errors = new InstrumentErrors(home.survey(), tables.readings().accuracy());
    this.factors = new FactorFinder(home, tables, errors);
    this.builder = new PlaceBuilder(home, tables, this.vapour, errors);
  }

  /**
   * Condensation and mould risk of a home.
   *
   * @param home the home with every gap filled
   * @param vapour what was read of its indoor vapour
   * @param tables what is published about surfaces
   */
  public static CondensationResult assess(Home home, IndoorVapours vapour, SurfaceTables tables) {
    return new SurfaceAssessor(home, vapour, tables).assess();
  }

  private CondensationResult assess() {
    List<ColdPlace> places = new ArrayList<>();
    List<RoomFacts> judged = new ArrayList<>();
    for (RoomFacts room : home.rooms()) {
      List<ColdPlace> here = places(room);
      if (!here.isEmpty()) {
        places.addAll(here);
        judged.add(room);
      }
    }
    List<Assumption> assumptions = new ArrayList<>(vapour.assumptions(judged));
    assumptions.addAll(new SurfaceAssumptions(tables).of(places));
    assumptions.addAll(errors.assumptions());
    return new CondensationResult(
        places, judged.stream().map(vapour::sentence).toList(), assumptions);
  }

  private List<ColdPlace> places(RoomFacts room) {
    List<ColdPlace> places = new ArrayList<>();
    for (ColdSpot spot : room.room().coldSpots()) {
      places.add(coldSpot(room, spot));
    }
    WindowPlaces windows = new WindowPlaces(tables.glazing(), factors, builder);
    for (Window window : room.room().windows()) {
      places.addAll(windows.of(room, window));
    }
    for (Wall wall : room.room().walls()) {
      places.add(wall(room, wall));
    }
    return places;
  }

  private ColdPlace coldSpot(RoomFacts room, ColdSpot spot) {
    TemperatureFactor factor = factors.ofColdSpot(spot.id(), room, spot);
    PlaceBuilder.Draft draft =
        new PlaceBuilder.Draft(
            spot.id(),
            spot.id(),
            spot.name().orElse(spot.kind().word()),
            PlaceKind.COLD_SPOT,
            spot.kind().word(),
            new Seen(spot.mouldSeen(), spot.mouldArea().map(Quantity::range), Optional.empty()),
            factor,
            factor.readings());
    return switch (spot.kind()) {
      case WALL -> builder.opaque(room, draft, factors.behindFurniture(spot.id(), spot));
      case EXTERNAL_CORNER,
          CEILING_EDGE,
          FLOOR_EDGE,
          WINDOW_REVEAL,
          LINTEL,
          SILL,
          BEHIND_FURNITURE,
          FAN_SLEEVE,
          CEILING,
          FLOOR,
          LOFT_HATCH,
          OTHER ->
          builder.opaque(room, draft, Optional.empty());
    };
  }

  private ColdPlace wall(RoomFacts room, Wall wall) {
    PlaceBuilder.Draft draft =
        new PlaceBuilder.Draft(
            wall.id(),
            wall.id(),
            wall.name().orElse("wall " + wall.id()),
            PlaceKind.BUILT_UP_WALL,
            "built-up wall",
            Seen.nothingNoted(),
            factors.ofWall(wall.id(), wall, FilmUse.WALL),
            List.of());
    return builder.opaque(
        room,
        draft,
        Optional.of(factors.ofWall(wall.id() + ".furnished", wall, FilmUse.FURNITURE)));
  }
}
