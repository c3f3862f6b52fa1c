package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The key of an id in a bundle. Parts of an id that the survey names, such as a room, stand as
 * {@code *} in the key: {@code room.*.dew_point} is the key of {@code room.kitchen.dew_point}.
 *
 * @param key the key
 * @param named the parts behind its stars, in order
 */
record Keys(String key, List<String> named) {
  private static final int MOST_PARTS = 8;

  Keys {
    named = List.copyOf(named);
  }

  /** The key with the fewest stars that is known; empty where none is. */
  static Optional<Keys> of(String group, String id, Predicate<String> known) {
    String[] parts = id.split("\\.");
    if (parts.length > MOST_PARTS) {
      return Optional.empty();
    }
    return IntStream.range(0, 1 << parts.length)
        .boxed()
        .sorted((a, b) -> Integer.compare(Integer.bitCount(a), Integer.bitCount(b)))
        .map(stars -> starred(group, parts, stars))
        .filter(keys -> known.test(keys.key()))
        .findFirst();
  }

  private static Keys starred(String group, String[] parts, int stars) {
    List<String> key = new ArrayList<>(List.of(group));
    List<String> named = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      boolean star = (stars & (1 << i)) != 0;
      key.add(star ? "*" : parts[i]);
      if (star) {
        named.add(parts[i]);
      }
    }
    return new Keys(String.join(".", key), named);
  }
}
