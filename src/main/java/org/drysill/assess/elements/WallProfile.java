package org.drysill.assess.elements;

import java.util.List;

/**
 * Temperature and vapour through a wall in the month in which most water settles, or in which the
 * vapour comes closest to saturation.
 *
 * @param month 1 for January to 12
 * @param indoorC temperature of the room [°C]
 * @param outdoorC temperature outdoors [°C]
 * @param indoorPa vapour pressure in the room [Pa]
 * @param outdoorPa vapour pressure outdoors [Pa]
 * @param points from the inner to the outer surface
 */
public record WallProfile(
    int month,
    double indoorC,
    double outdoorC,
    double indoorPa,
    double outdoorPa,
    List<ProfilePoint> points) {
  /** Copies the list. */
  public WallProfile {
    points = List.copyOf(points);
  }
}
