package org.drysill.assess.elements;

import java.util.List;
import org.drysill.assess.Basis;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.reference.Citation;
import org.drysill.reference.surfaces.FilmUse;
import org.drysill.reference.surfaces.SurfaceCatalogue;
import org.drysill.reference.surfaces.SurfaceResistance;

/** The air films of a wall, heat flowing sideways. */
record Films(SurfaceResistance room, SurfaceResistance outdoors) {
  static Films of(SurfaceCatalogue surfaces) {
    return new Films(
        surfaces.resistance(FilmUse.HEAT_FLOW_HORIZONTAL), surfaces.resistance(FilmUse.OUTSIDE));
  }

  /** Rsi [m²·K/W]. */
  double inside() {
    return room.range().likely();
  }

  /** Rse [m²·K/W]. */
  double outside() {
    return outdoors.range().likely();
  }

  List<Input> inputs() {
    return List.of(
        Input.of("Rsi", "film in the room", room.range(), Unit.RESISTANCE, Basis.PUBLISHED),
        Input.of("Rse", "film outside", outdoors.range(), Unit.RESISTANCE, Basis.PUBLISHED));
  }

  List<Citation> sources() {
    return List.of(room.source(), outdoors.source());
  }
}
