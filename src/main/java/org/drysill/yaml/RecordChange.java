package org.drysill.yaml;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** Makes records anew with other values in some of their components. */
public final class RecordChange {
  private RecordChange() {}

  /** What stands in a component of the new record. */
  public interface Each {
    /**
     * The value of a component.
     *
     * @param component the component
     * @param value its value in the old record
     */
    Object value(RecordComponent component, Object value);
  }

  /** The record with another value in each component that is to have one. */
  public static <T extends Record> T of(T record, Each each) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    List<RecordParts.Part> parts = RecordParts.of(record);
    Object[] values = new Object[components.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = each.value(components[i], parts.get(i).in(record));
    }
    return made(record, components, values);
  }

  @SuppressWarnings("unchecked") // A record's class is the class of what its constructor makes.
  private static <T extends Record> T made(T like, RecordComponent[] components, Object[] values) {
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      Constructor<?> constructor = like.getClass().getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return (T) constructor.newInstance(values);
    } catch (InvocationTargetException refused) {
      throw new IllegalArgumentException("refused: " + like.getClass(), refused.getCause());
    } catch (ReflectiveOperationException broken) {
      throw new IllegalStateException("cannot make " + like.getClass(), broken);
    }
  }
}
