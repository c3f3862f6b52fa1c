package org.drysill.yaml;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What reflection tells of a record, asked once: a file has the same one hundreds of times. */
final class RecordType {
  private static final ClassValue<RecordType> KNOWN =
      new ClassValue<>() {
        @Override
        protected RecordType computeValue(Class<?> type) {
          return new RecordType(type);
        }
      };

  private final List<Field> fields;
  private final List<String> names;
  private final Optional<String> shorthand;
  private final Constructor<?> constructor;

  private RecordType(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    this.fields = Arrays.stream(components).map(Field::of).toList();
    this.names = fields.stream().map(Field::name).toList();
    this.shorthand =
        Optional.ofNullable(type.getAnnotation(Shorthand.class))
            .map(Shorthand::value)
            .map(Field::snake);
    this.constructor = canonical(type, components);
  }

  static RecordType of(Class<?> type) {
    return KNOWN.get(type);
  }

  /** The keys in their order. */
  List<Field> fields() {
    return fields;
  }

  /** The names of the keys in their order. */
  List<String> names() {
    return names;
  }

  /** The key that a scalar stands for; empty where none may stand for the record. */
  Optional<String> shorthand() {
    return shorthand;
  }

  /**
   * Makes a record.
   *
   * @param values one for each key, in the order of the keys
   * @throws IllegalArgumentException where the record's own rules refuse the values
   */
  Object make(Object[] values) {
    try {
      return constructor.newInstance(values);
    } catch (InvocationTargetException refused) {
      if (refused.getCause() instanceof IllegalArgumentException reason) {
        throw reason;
      }
      throw new IllegalStateException("cannot make " + constructor, refused);
    } catch (ReflectiveOperationException broken) {
      throw new IllegalStateException("cannot make " + constructor, broken);
    }
  }

  private static Constructor<?> canonical(Class<?> type, RecordComponent[] components) {
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      Constructor<?> constructor = type.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return constructor;
    } catch (NoSuchMethodException impossible) {
      throw new IllegalStateException("every record has its canonical constructor", impossible);
    }
  }
}
