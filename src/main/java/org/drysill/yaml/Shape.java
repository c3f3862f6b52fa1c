package org.drysill.yaml;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What may stand at a place of a file, as the Java type behind it says.
 *
 * @param kind the sort of value
 * @param type the Java class
 * @param parts the shape of the content: one for OPTIONAL and LIST, key and value for MAP
 */
record Shape(Kind kind, Class<?> type, List<Shape> parts) {
  enum Kind {
    TEXT,
    FLAG,
    WHOLE,
    DECIMAL,
    DAY,
    MOMENT,
    QUANTITY,
    WORD,
    RECORD,
    OPTIONAL,
    LIST,
    MAP
  }

  static Shape of(Type type) {
    if (type instanceof ParameterizedType generic) {
      Class<?> raw = (Class<?>) generic.getRawType();
      List<Shape> parts =
          List.of(generic.getActualTypeArguments()).stream().map(Shape::of).toList();
      return new Shape(container(raw), raw, parts);
    }
    if (type instanceof Class<?> plain) {
      return new Shape(plain(plain), plain, List.of());
    }
    throw new IllegalArgumentException("no YAML value can fill " + type);
  }

  private static Kind container(Class<?> raw) {
    if (raw == Optional.class) {
      return Kind.OPTIONAL;
    }
    if (raw == List.class) {
      return Kind.LIST;
    }
    if (raw == Map.class) {
      return Kind.MAP;
    }
    throw new IllegalArgumentException("no YAML value can fill " + raw);
  }

  private static Kind plain(Class<?> type) {
    if (type == String.class) {
      return Kind.TEXT;
    }
    if (type == boolean.class || type == Boolean.class) {
      return Kind.FLAG;
    }
    if (type == int.class || type == Integer.class) {
      return Kind.WHOLE;
    }
    if (type == double.class || type == Double.class) {
      return Kind.DECIMAL;
    }
    if (type == LocalDate.class) {
      return Kind.DAY;
    }
    if (type == Moment.class) {
      return Kind.MOMENT;
    }
    if (type == Quantity.class) {
      return Kind.QUANTITY;
    }
    return structured(type);
  }

  private static Kind structured(Class<?> type) {
    if (type.isEnum() && Worded.class.isAssignableFrom(type)) {
      return Kind.WORD;
    }
    if (type.isRecord()) {
      return Kind.RECORD;
    }
    throw new IllegalArgumentException("no YAML value can fill " + type);
  }

  /** The shape within an OPTIONAL; the shape itself otherwise. */
  Shape unwrapped() {
    return kind == Kind.OPTIONAL ? parts.get(0) : this;
  }

  /** The shape of the entries of a LIST or the values of a MAP. */
  Shape content() {
    return parts.get(parts.size() - 1);
  }

  boolean isRequired() {
    return kind != Kind.OPTIONAL && kind != Kind.LIST && kind != Kind.MAP;
  }

  Class<? extends Record> recordType() {
    return type.asSubclass(Record.class);
  }

  List<Worded> words() {
    return List.of(type.asSubclass(Worded.class).getEnumConstants());
  }
}
