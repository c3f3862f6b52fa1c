package org.drysill.survey.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drysill.survey.Survey;
import org.drysill.yaml.Key;
import org.drysill.yaml.Moment;
import org.drysill.yaml.Quantity;
import org.junit.jupiter.api.Test;

/** No key can be added whose words would slip into a copy that is shared. */
class EveryTextTest {
  private final Set<Class<?>> seen = new LinkedHashSet<>();
  private final Set<String> kept = new TreeSet<>();
  private final Set<String> wrong = new TreeSet<>();

  @Test
  void every_text_of_a_survey_is_left_out_renamed_or_kept_on_purpose() {
    visit(Survey.class);
    assertThat(seen).hasSizeGreaterThan(20);
    assertThat(kept)
        .containsExactlyInAnyOrder(
            "Construction.roof",
            "Construction.walls",
            "Prices.currency",
            "CycleLogger.timePattern",
            "CycleLogger.zone",
            "CycleLogger.delimiter",
            "CycleLogger.decimalMark",
            "Logger.timePattern",
            "Logger.zone",
            "Logger.delimiter",
            "Logger.decimalMark");
    assertThat(wrong).isEmpty();
  }

  private void visit(Class<?> type) {
    if (!seen.add(type)) {
      return;
    }
    for (RecordComponent component : type.getRecordComponents()) {
      boolean leftOut = component.isAnnotationPresent(LeftOut.class);
      String name = type.getSimpleName() + "." + component.getName();
      if (leftOut && component.getType() != Optional.class && !isList(component)) {
        wrong.add(name + " cannot be left out");
      }
      if (!leftOut && !component.isAnnotationPresent(Renamed.class)) {
        look(component.getGenericType(), component.getAnnotation(Key.class), name);
      }
    }
  }

  private static boolean isList(RecordComponent component) {
    return component.getType() == java.util.List.class;
  }

  private void look(Type type, Key key, String name) {
    if (type instanceof ParameterizedType of) {
      for (Type argument : of.getActualTypeArguments()) {
        look(argument, key, name);
      }
    } else if (type == String.class && key.vocabulary().isEmpty()) {
      kept.add(name);
    } else if (type instanceof Class<?> inner
        && inner.isRecord()
        && inner != Quantity.class
        && inner != Moment.class) {
      visit(inner);
    }
  }
}
