package org.drysill.yaml;

import java.lang.reflect.Method;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the files that a record names, by the keys that say {@link Key#file}. */
public final class NamedFiles {
  private NamedFiles() {}

  /** The paths as written, by the path of the key that names each, in the order of the record. */
  public static Map<String, String> of(Record root) {
    Map<String, String> found = new LinkedHashMap<>();
    collect(root, "", found);
    return Collections.unmodifiableMap(found);
  }

  private static void collect(Record from, String path, Map<String, String> found) {
    for (Field field : Field.of(from.getClass())) {
      Object value = component(from, field);
      follow(value, field.key(), NodeReader.child(path, field.name()), found);
    }
  }

  private static void follow(Object value, Key key, String path, Map<String, String> found) {
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(inner -> follow(inner, key, path, found));
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        follow(list.get(i), key, path + "[" + i + "]", found);
      }
    } else if (value instanceof Map<?, ?> map) {
      map.forEach((name, inner) -> follow(inner, key, path + "." + name, found));
    } else if (value instanceof Record inner
        && !(value instanceof Quantity || value instanceof Moment)) {
      collect(inner, path, found);
    } else if (value instanceof String text && key.file()) {
      found.put(path, text);
    }
  }

  private static Object component(Record from, Field field) {
    try {
      Method accessor = field.accessor();
      accessor.setAccessible(true);
      return accessor.invoke(from);
    } catch (ReflectiveOperationException broken) {
      throw new IllegalStateException("cannot look into " + from.getClass(), broken);
    }
  }
}
