package org.drysill.assess.surfaces.factor;

import org.drysill.reference.surfaces.FilmUse;
import org.drysill.survey.ColdSpotKind;

/** Which film resistance a kind of cold spot has. */
final class Films {
  private Films() {}

  /** On the room side, for humidity at the surface. */
  static FilmUse atSurface(ColdSpotKind kind) {
    return switch (kind) {
      case EXTERNAL_CORNER, CEILING_EDGE, FLOOR_EDGE, WINDOW_REVEAL -> FilmUse.CORNER;
      case BEHIND_FURNITURE -> FilmUse.FURNITURE;
      case LINTEL, SILL, FAN_SLEEVE, WALL, CEILING, FLOOR, LOFT_HATCH, OTHER -> FilmUse.WALL;
    };
  }

  /** On the room side, within a stated U-value. */
  static FilmUse withinU(ColdSpotKind kind) {
    return switch (kind) {
      case CEILING_EDGE, CEILING, LOFT_HATCH -> FilmUse.HEAT_FLOW_UP;
      case FLOOR_EDGE, FLOOR -> FilmUse.HEAT_FLOW_DOWN;
      case EXTERNAL_CORNER,
          WINDOW_REVEAL,
          LINTEL,
          SILL,
          BEHIND_FURNITURE,
          FAN_SLEEVE,
          WALL,
          OTHER ->
          FilmUse.HEAT_FLOW_HORIZONTAL;
    };
  }
}
