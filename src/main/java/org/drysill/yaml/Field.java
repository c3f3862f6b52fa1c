package org.drysill.yaml;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A key of a record.
 *
 * @param name the key as it stands in files
 * @param key what the record says about it
 * @param shape what may stand there
 * @param accessor how to get the value out of a record
 */
record Field(String name, Key key, Shape shape, Method accessor) {
  private static final Pattern CAPITAL = Pattern.compile("[A-Z]");

  /** The keys of a record in their order. */
  static List<Field> of(Class<? extends Record> type) {
    return RecordType.of(type).fields();
  }

  static Field of(RecordComponent component) {
    Key key = component.getAnnotation(Key.class);
    if (key == null) {
      throw new IllegalArgumentException(
          component.getDeclaringRecord().getSimpleName()
              + "."
              + component.getName()
              + " says nothing about its key");
    }
    return new Field(
        snake(component.getName()),
        key,
        Shape.of(component.getGenericType()),
        component.getAccessor());
  }

  static String snake(String camel) {
    return CAPITAL.matcher(camel).replaceAll("_$0").toLowerCase(Locale.ROOT);
  }

  boolean isRequired() {
    return shape.isRequired() || key.required();
  }
}
