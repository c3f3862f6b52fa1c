package org.drysill.report.json;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.drysill.assess.Home;
import org.drysill.assess.logs.Trace;
import org.drysill.assess.model.HomeStates;
import org.drysill.yaml.RecordParts;

/**
 * A key of the results: a component of a record that is told. Writer and schema go by the same
 * list.
 *
 * @param name the key, without the unit of a figure
 * @param part the component
 * @param beside whether its own parts stand in its place
 */
record ResultKey(String name, RecordParts.Part part, boolean beside) {
  /** What is no result: the home that all was told of, traces, what further steps reckon with. */
  private static final Set<Class<?>> NOT_TOLD = Set.of(Home.class, Trace.class, HomeStates.class);

  private static final Pattern HUMP = Pattern.compile("([a-z0-9])([A-Z])");

  private static final ClassValue<List<ResultKey>> KNOWN =
      new ClassValue<>() {
        @Override
        protected List<ResultKey> computeValue(Class<?> type) {
          return RecordParts.of(type).stream()
              .filter(part -> !NOT_TOLD.contains(part.type()))
              .map(ResultKey::of)
              .toList();
        }
      };

  /** The keys of a record's class in their order. */
  static List<ResultKey> of(Class<?> type) {
    return KNOWN.get(type);
  }

  private static ResultKey of(RecordParts.Part part) {
    return new ResultKey(
        snake(part.name()), part, part.accessor().isAnnotationPresent(Beside.class));
  }

  static String snake(String name) {
    return HUMP.matcher(name).replaceAll("$1_$2").toLowerCase(Locale.ROOT);
  }
}
