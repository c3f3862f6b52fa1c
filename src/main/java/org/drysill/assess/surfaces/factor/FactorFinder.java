package org.drysill.assess.surfaces.factor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.reference.glazing.Glazing;
import org.drysill.reference.surfaces.FilmUse;
import org.drysill.reference.surfaces.SurfaceTables;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.Frame;
import org.drysill.survey.SurfaceReading;
import org.drysill.survey.Wall;
import org.drysill.survey.Window;

/**
 * Finds the temperature factor of a place from the best that the survey gives: readings, else a
 * stated factor, else a U-value, glazing or layers, else a typical detail of its kind and age.
 */
public final class FactorFinder {
  private final Home home;
  private final SurfaceTables tables;
  private final ReadingAssessment readings;
  private final PlaceFactors factors;
  private final PlaneFactors planes;

  /** Finds factors of places of a home. */
  public FactorFinder(Home home, SurfaceTables tables, InstrumentErrors errors) {
    this.home = home;
    this.tables = tables;
    this.readings = new ReadingAssessment(home, tables, errors);
    this.factors = new PlaceFactors(tables);
    this.planes = new PlaneFactors(tables);
  }

  /** What each surface reading of a room gives, refused ones too. */
  public List<ReadingFactor> readings(RoomFacts room, List<SurfaceReading> taken) {
    return taken.stream().map(r -> readings.of(room.room(), r)).toList();
  }

  /** The factor of a cold spot. */
  public TemperatureFactor ofColdSpot(String place, RoomFacts room, ColdSpot spot) {
    List<ReadingFactor> read = readings(room, spot.readings());
    return ofReadings(place, read)
        .or(() -> spot.temperatureFactor().map(f -> factors.stated(place, f, read)))
        .or(() -> spot.uValue().map(u -> planes.ofU(place, u, spot.kind(), read)))
        .orElseGet(() -> typical(place, spot.kind().word(), read));
  }

  /** The factor from readings alone: of the coldest point that was read; empty without any. */
  public Optional<TemperatureFactor> ofReadings(String place, List<ReadingFactor> read) {
    return CombinedReadings.coldest(read).map(c -> factors.read(place, c, read));
  }

  /** The factor of the middle of a pane. */
  public TemperatureFactor ofPaneCentre(String place, Window window, List<ReadingFactor> read) {
    return window
        .uValue()
        .map(u -> planes.ofPaneU(place, u, read))
        .orElseGet(() -> planes.ofGlazing(place, GlassFactor.kind(window, tables.glazing()), read));
  }

  /** The factor of the lower edge of a pane; empty where the kind of glazing has no edge. */
  public Optional<TemperatureFactor> ofPaneEdge(String place, Window window) {
    return GlassFactor.edge(window, tables.glazing()).map(e -> factors.ofEdge(place, e));
  }

  /** The factor of a frame of metal; other frames are warmer than the edge of any pane in them. */
  public Optional<TemperatureFactor> ofMetalFrame(String place, Window window) {
    return window.frame().filter(FactorFinder::isMetal).map(f -> planes.ofFrame(place, f.word()));
  }

  private static boolean isMetal(Frame frame) {
    return switch (frame) {
      case METAL, METAL_WITH_THERMAL_BREAK -> true;
      case TIMBER, PVC -> false;
    };
  }

  /**
   * The factors of a pane of another kind in the frame of a window: of its middle, and of its lower
   * edge where it has one.
   */
  public List<TemperatureFactor> ofOtherPane(String place, Window window, Glazing kind) {
    List<TemperatureFactor> parts = new ArrayList<>();
    parts.add(planes.ofGlazing(place + ".centre", kind, List.of()));
    GlassFactor.edge(kind, window.frame(), tables.glazing())
        .ifPresent(e -> parts.add(factors.ofEdge(place + ".edge", e)));
    return parts;
  }

  /** The factor of a built-up wall, with what stands before it. */
  public TemperatureFactor ofWall(String place, Wall wall, FilmUse film) {
    return PlaneFactor.resistance(wall.layers(), tables.materials())
        .map(r -> planes.ofLayers(place, r, film))
        .orElseGet(() -> typical(place, "wall", List.of()));
  }

  /** The factor of a cold spot with a U-value, were it behind furniture; empty without one. */
  public Optional<TemperatureFactor> behindFurniture(String place, ColdSpot spot) {
    return spot.uValue().map(u -> planes.behindFurniture(place, u, spot.kind()));
  }

  private TemperatureFactor typical(String place, String kind, List<ReadingFactor> read) {
    return factors.typical(place, kind, home.survey().dwelling().built(), read);
  }
}
