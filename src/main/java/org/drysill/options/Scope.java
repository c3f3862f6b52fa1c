package org.drysill.options;

import java.util.List;

/**
 * The places of the survey to which a measure applies, by their ids; all empty for the whole home.
 *
 * @param rooms rooms
 * @param windows windows
 * @param coldSpots cold spots
 * @param fans fans
 */
public record Scope(
    List<String> rooms, List<String> windows, List<String> coldSpots, List<String> fans) {
  /** Copies the lists. */
  public Scope {
    rooms = List.copyOf(rooms);
    windows = List.copyOf(windows);
    coldSpots = List.copyOf(coldSpots);
    fans = List.copyOf(fans);
  }

  /** The whole home. */
  public static Scope home() {
    return new Scope(List.of(), List.of(), List.of(), List.of());
  }

  /** True where both have a place in common; the home as a whole has one with every place. */
  public boolean meets(Scope other) {
    if (!windows.isEmpty() && !other.windows.isEmpty()) {
      return common(windows, other.windows);
    }
    return rooms.isEmpty() || other.rooms.isEmpty() || common(rooms, other.rooms);
  }

  private static boolean common(List<String> some, List<String> others) {
    return some.stream().anyMatch(others::contains);
  }

  /** True where no single place is meant. */
  public boolean wholeHome() {
    return rooms.isEmpty() && windows.isEmpty() && coldSpots.isEmpty() && fans.isEmpty();
  }
}
