package org.drysill.reference.ventilation;

import java.util.Arrays;
import java.util.List;

/** Tables that must have a row for every case. */
final class Rows {
  private Rows() {}

  static <E> void every(String key, E[] all, List<E> given) {
    if (!given.containsAll(Arrays.asList(all))) {
      throw new IllegalArgumentException(
          "a row in " + key + " for each of " + Arrays.toString(all));
    }
  }
}
