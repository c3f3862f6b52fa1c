package org.drysill.report.json;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The types that a schema defines, each once, by names that nothing else has. */
final class Definitions {
  private final Map<Class<?>, String> names = new LinkedHashMap<>();
  private final Deque<Class<?>> waiting = new ArrayDeque<>();

  /** The reference to a type's definition, which waits to be written in its turn. */
  String refer(Class<?> type) {
    if (!names.containsKey(type)) {
      names.put(type, free(type));
      waiting.add(type);
    }
    return "#/$defs/" + name(type);
  }

  String name(Class<?> type) {
    return names.get(type);
  }

  /** The next type to be defined; empty when none waits. */
  Optional<Class<?>> next() {
    return Optional.ofNullable(waiting.poll());
  }

  /** The name with the class around it; where that is taken, with the package before it. */
  private String free(Class<?> type) {
    String whole = type.getName().replace('$', '.');
    String name = whole.substring(type.getPackageName().length() + 1);
    String folder = type.getPackageName();
    return names.containsValue(name)
        ? folder.substring(folder.lastIndexOf('.') + 1) + "." + name
        : name;
  }
}
