package org.drysill.yaml;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** The components of records, for those who go through values of any kind. */
public final class RecordParts {
  private static final ClassValue<List<Part>> KNOWN =
      new ClassValue<>() {
        @Override
        protected List<Part> computeValue(Class<?> type) {
          return Arrays.stream(type.getRecordComponents()).map(Part::of).toList();
        }
      };

  private RecordParts() {}

  /** The components of a record's class, in their order. */
  public static List<Part> of(Record record) {
    return of(record.getClass());
  }

  /** The components of a class of records, in their order. */
  public static List<Part> of(Class<?> type) {
    return KNOWN.get(type);
  }

  /**
   * One component.
   *
   * @param name its name in Java
   * @param type its class in Java
   * @param accessor what gives its value
   */
  public record Part(String name, Class<?> type, Method accessor) {
    private static Part of(RecordComponent component) {
      Method accessor = component.getAccessor();
      // A package-private record has public components that only reflection with leave can read.
      accessor.setAccessible(true);
      return new Part(component.getName(), component.getType(), accessor);
    }

    /** The value that a record of the class has in it. */
    public Object in(Record record) {
      try {
        return accessor.invoke(record);
      } catch (ReflectiveOperationException broken) {
        throw new IllegalStateException("cannot read " + name + " of " + record.getClass(), broken);
      }
    }
  }
}
