package org.drysill.report.json;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.assess.Figure;
import org.drysill.yaml.RecordParts;

/**
 * What a component may hold.
 *
 * @param present its type where there is a value
 * @param mayBeAbsent whether there may be none, and then no key
 */
record ResultType(Type present, boolean mayBeAbsent) {
  static ResultType of(RecordParts.Part part) {
    if (part.type() == OptionalDouble.class) {
      return new ResultType(double.class, true);
    }
    Type type = part.accessor().getGenericReturnType();
    return part.type() == Optional.class
        ? new ResultType(content(type), true)
        : new ResultType(type, false);
  }

  /** The type within a list or an optional. */
  static Type content(Type container) {
    return ((ParameterizedType) container).getActualTypeArguments()[0];
  }

  /** Whether the key carries the unit. */
  boolean hasUnitInKey() {
    return present == Figure.class || present == Outcome.class || present == InUnit.class;
  }

  /** Whether it is a value with a unit of its own, or a list of such. */
  boolean holdsFigures() {
    return hasUnitInKey()
        || (present instanceof ParameterizedType many
            && new ResultType(content(many), false).holdsFigures());
  }
}
