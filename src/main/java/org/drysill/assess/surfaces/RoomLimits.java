package org.drysill.assess.surfaces;

import java.util.List;

/**
 * How much of today's vapour excess a room and its places bear.
 *
 * @param room the survey's id
 * @param places its cold places
 * @param humidityWithoutExcess mean relative humidity in the coldest month, were there no excess
 *     [1]
 * @param humidityOfExcess what today's excess adds to it [1]
 */
public record RoomLimits(
    String room, List<PlaceLimits> places, double humidityWithoutExcess, double humidityOfExcess) {
  /** Copies the list. */
  public RoomLimits {
    places = List.copyOf(places);
  }

  /**
   * A place.
   *
   * @param item the survey's id
   * @param name its name in sentences
   * @param kind which part of the survey it comes from
   * @param surface what may happen on it
   * @param factor its likely temperature factor [1]
   * @param ratios of each month, January first, the least multiple of today's excess at which it is
   *     at risk
   */
  public record PlaceLimits(
      String item,
      String name,
      PlaceKind kind,
      SurfaceClass surface,
      double factor,
      List<Double> ratios) {
    /** Copies the list. */
    public PlaceLimits {
      ratios = List.copyOf(ratios);
    }
  }
}
