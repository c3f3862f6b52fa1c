package org.drysill.assess.ventilation.airing;

import java.util.List;
import org.drysill.assess.Figure;

/**
 * How fast the open windows of a room change its air.
 *
 * @param room the id of the room
 * @param name its name in sentences
 * @param whole false where it has more windows that open, of which size or angle is not known
 * @param weathers the flow at each weather, in the order of the data
 */
public record RoomAiring(String room, String name, boolean whole, List<AtWeather> weathers) {
  /** Copies the list. */
  public RoomAiring {
    weathers = List.copyOf(weathers);
  }

  /**
   * Airing at one weather.
   *
   * @param weather its name
   * @param winter true for the one of which a sentence is made
   * @param flow flow through all windows, open as far as they go [m³/s]
   * @param airChange the same as air changes of the room [1/h]
   */
  public record AtWeather(String weather, boolean winter, Figure flow, Figure airChange) {}
}
