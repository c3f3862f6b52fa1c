package org.drysill.physics.network;

import java.util.List;

/** Whether every room of a network reaches the outside. */
final class Reach {
  private Reach() {}

  static void check(int rooms, List<AirNetwork.Between> between, List<AirNetwork.Outside> outside) {
    boolean[] reached = new boolean[rooms];
    outside.stream().filter(o -> isOpen(o.path())).forEach(o -> reached[o.room()] = true);
    boolean grew = true;
    while (grew) {
      grew = false;
      for (AirNetwork.Between way : between) {
        if (isOpen(way.path()) && reached[way.from()] != reached[way.to()]) {
          reached[way.from()] = true;
          reached[way.to()] = true;
          grew = true;
        }
      }
    }
    for (int room = 0; room < rooms; room++) {
      if (!reached[room]) {
        throw new IllegalArgumentException("no way from room " + room + " to the outside");
      }
    }
  }

  private static boolean isOpen(AirPath path) {
    return path.coefficient() > 0;
  }
}
