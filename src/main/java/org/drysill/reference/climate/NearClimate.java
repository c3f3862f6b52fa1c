package org.drysill.reference.climate;

/**
 * A climate and how far away it is.
 *
 * @param climate the climate
 * @param kilometres along the great circle from the place that was asked for
 */
public record NearClimate(ReferenceClimate climate, double kilometres) {
  private static final double EARTH_RADIUS_KM = 6371;

  /** The distance to a climate whose position is known, by the haversine formula on a sphere. */
  static NearClimate from(double latitude, double longitude, ReferenceClimate climate) {
    double there = Math.toRadians(climate.latitude().orElseThrow().value());
    double here = Math.toRadians(latitude);
    double east = Math.toRadians(climate.longitude().orElseThrow().value() - longitude);
    double half =
        square(Math.sin((there - here) / 2))
            + Math.cos(here) * Math.cos(there) * square(Math.sin(east / 2));
    return new NearClimate(climate, 2 * EARTH_RADIUS_KM * Math.asin(Math.sqrt(Math.min(1, half))));
  }

  private static double square(double x) {
    return x * x;
  }
}
