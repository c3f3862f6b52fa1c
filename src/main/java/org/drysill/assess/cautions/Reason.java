package org.drysill.assess.cautions;

import java.util.List;
import java.util.Optional;

/**
 * Why a caution is shown.
 *
 * @param because in a sentence
 * @param rooms the ids of the rooms that it is about
 */
record Reason(String because, List<String> rooms) {
  Reason {
    rooms = List.copyOf(rooms);
  }

  static Optional<Reason> home(String because) {
    return Optional.of(new Reason(because, List.of()));
  }

  static Optional<Reason> rooms(String because, List<String> rooms) {
    return Optional.of(new Reason(because, rooms));
  }
}
