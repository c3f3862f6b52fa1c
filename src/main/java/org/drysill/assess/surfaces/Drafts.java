package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.surfaces.factor.FactorFinder;
import org.drysill.assess.surfaces.factor.TemperatureFactor;
import org.drysill.reference.surfaces.FilmUse;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.ColdSpotKind;
import org.drysill.survey.SurfaceMaterial;
import org.drysill.survey.Wall;
import org.drysill.survey.Window;
import org.drysill.yaml.Quantity;

/** The cold spots, windows and built-up walls of a room with their temperature factors. */
final class Drafts {
  private final FactorFinder factors;
  private final WindowPlaces windows;

  Drafts(FactorFinder factors, SurfaceTables tables) {
    this.factors = factors;
    this.windows = new WindowPlaces(tables.glazing(), factors);
  }

  /** Gives each place as soon as it is known, in the order of the survey. */
  void each(RoomFacts room, Consumer<Draft> place) {
    for (ColdSpot spot : room.room().coldSpots()) {
      place.accept(coldSpot(room, spot));
    }
    for (Window window : room.room().windows()) {
      windows.each(room, window, place);
    }
    for (Wall wall : room.room().walls()) {
      place.accept(wall(wall));
    }
  }

  private Draft coldSpot(RoomFacts room, ColdSpot spot) {
    TemperatureFactor factor = factors.ofColdSpot(spot.id(), room, spot);
    return new Draft(
        spot.id(),
        spot.id(),
        spot.name().orElseGet(() -> called(spot.kind())),
        PlaceKind.COLD_SPOT,
        spot.kind().word(),
        SurfaceClass.OPAQUE,
        new Seen(spot.mouldSeen(), spot.mouldArea().map(Quantity::range), Optional.empty()),
        spot.material().map(SurfaceMaterial::word),
        factor,
        factor.readings(),
        furnished(spot),
        Optional.empty());
  }

  /** What a place without a name is called, to follow "the". */
  private static String called(ColdSpotKind kind) {
    return switch (kind) {
      case BEHIND_FURNITURE -> "wall behind furniture";
      case WALL -> "outside wall";
      case OTHER -> "cold place";
      default -> kind.word();
    };
  }

  private Optional<TemperatureFactor> furnished(ColdSpot spot) {
    return switch (spot.kind()) {
      case WALL -> factors.behindFurniture(spot.id(), spot);
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
          Optional.empty();
    };
  }

  private Draft wall(Wall wall) {
    return new Draft(
        wall.id(),
        wall.id(),
        wall.name().orElse("wall " + wall.id()),
        PlaceKind.BUILT_UP_WALL,
        "built-up wall",
        SurfaceClass.OPAQUE,
        Seen.nothingNoted(),
        Optional.empty(),
        factors.ofWall(wall.id(), wall, FilmUse.WALL),
        List.of(),
        Optional.of(factors.ofWall(wall.id() + ".furnished", wall, FilmUse.FURNITURE)),
        Optional.empty());
  }
}
