package org.drysill.verify;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Where two trees of results differ, to the last digit. */
final class Differences {
  private static final String[] NAMES = {"id", "room", "month", "name"};
  private static final String ABSENT = "nothing";

  private final List<String> found = new ArrayList<>();

  private Differences() {}

  /** One line for each value that is not the same in both. */
  static List<String> between(Object there, Object again) {
    Differences differences = new Differences();
    differences.compare("", there, again);
    return differences.found;
  }

  private void compare(String path, Object there, Object again) {
    if (there instanceof Map<?, ?> one && again instanceof Map<?, ?> other) {
      Set<Object> keys = new LinkedHashSet<>(one.keySet());
      keys.addAll(other.keySet());
      for (Object key : keys) {
        compare(path.isEmpty() ? key.toString() : path + "." + key, one.get(key), other.get(key));
      }
    } else if (there instanceof List<?> one && again instanceof List<?> other) {
      compareLists(path, one, other);
    } else if (there == null || !there.equals(again)) {
      found.add(path + ": " + words(there) + " in the file, " + words(again) + " computed again");
    }
  }

  private void compareLists(String path, List<?> one, List<?> other) {
    if (one.size() != other.size()) {
      found.add(
          path + ": " + one.size() + " entries in the file, " + other.size() + " computed again");
    }
    for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
      compare(path + "[" + label(one.get(i), i) + "]", one.get(i), other.get(i));
    }
  }

  /** What the survey or the program calls an entry; its number from 1 where it has no name. */
  private static String label(Object entry, int index) {
    return entry instanceof Map<?, ?> map
        ? Stream.of(NAMES)
            .filter(map::containsKey)
            .findFirst()
            .map(key -> key.equals("month") ? "month " + map.get(key) : map.get(key).toString())
            .orElse(Integer.toString(index + 1))
        : Integer.toString(index + 1);
  }

  private static String words(Object value) {
    if (value == null) {
      return ABSENT;
    }
    if (value instanceof Map<?, ?> || value instanceof List<?>) {
      return "several values";
    }
    return value instanceof String text ? '"' + text + '"' : value.toString();
  }
}
