package org.drysill.assess.surfaces;

import org.drysill.assess.surfaces.months.RiskMonths;

/**
 * The risk of a place, where nothing else of it is asked.
 *
 * @param item the survey's id of the cold spot, window or wall
 * @param name its room and its own name, in sentences
 * @param surface what may happen on it
 * @param months how many months of the year it is at risk
 */
public record PlaceRisk(String item, String name, SurfaceClass surface, RiskMonths months) {
  /** The risk of a place that was assessed. */
  public static PlaceRisk of(ColdPlace place) {
    return new PlaceRisk(
        place.item(),
        place.roomName() + ", " + place.name(),
        place.surface(),
        RiskMonths.of(place.months()));
  }
}
