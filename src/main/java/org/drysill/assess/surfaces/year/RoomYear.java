package org.drysill.assess.surfaces.year;

import java.util.stream.Stream;

/**
 * A year of a room, hour by hour, where nothing else of it is asked.
 *
 * @param wetMornings mornings on which its wettest pane is seen to be wet
 * @param wetHours hours in which water settles on its wettest pane
 * @param mould highest mould index of its walls and corners, 0 to 6
 * @param humidHours hours in which its air is humid
 */
public record RoomYear(int wetMornings, int wetHours, double mould, int humidHours) {
  /** Nothing of all that. */
  public static final RoomYear NONE = new RoomYear(0, 0, 0, 0);

  /** The worst of several rooms, each of the four by itself. */
  public static RoomYear worst(Stream<RoomYear> rooms) {
    return rooms.reduce(NONE, RoomYear::or);
  }

  private RoomYear or(RoomYear other) {
    return new RoomYear(
        Math.max(wetMornings, other.wetMornings),
        Math.max(wetHours, other.wetHours),
        Math.max(mould, other.mould),
        Math.max(humidHours, other.humidHours));
  }
}
