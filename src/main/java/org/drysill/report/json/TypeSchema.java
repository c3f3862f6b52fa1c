package org.drysill.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drysill.assess.Basis;

/** Writes which values of a type may stand in the results: {@link RecordJson} says it of values. */
final class TypeSchema {
  private static final String RANGE = "Range";
  private static final String OUTCOME = "Outcome";
  private static final String FIGURE = "Figure";
  private static final String BASIS = "basis";
  private static final String WORKING = "working";
  private static final List<String> BOUNDS = List.of("low", "likely", "high");
  private static final Map<String, String> ABOUT =
      Map.of(
          "low",
          "The lowest value that it may have; null where there is no bound.",
          "likely",
          "The value that is most likely.",
          "high",
          "The highest value that it may have; null where there is no bound.",
          BASIS,
          "On what it rests; of several inputs the weakest.",
          WORKING,
          "The id of its entry under working.");

  private final JsonGenerator out;
  private final Definitions definitions;

  TypeSchema(JsonGenerator out, Definitions definitions) {
    this.out = out;
    this.definitions = definitions;
  }

  /** Writes into the object that is open. */
  void write(Type type) throws IOException {
    if (type instanceof ParameterizedType container) {
      container(container);
    } else if (type instanceof Class<?> plain) {
      plain(plain);
    } else {
      throw new IllegalArgumentException("no results can be of " + type);
    }
  }

  private void container(ParameterizedType type) throws IOException {
    if (type.getRawType() == Optional.class) {
      out.writeArrayFieldStart("anyOf");
      out.writeStartObject();
      write(ResultType.content(type));
      out.writeEndObject();
      out.writeStartObject();
      out.writeStringField("type", "null");
      out.writeEndObject();
      out.writeEndArray();
    } else if (type.getRawType() == List.class) {
      out.writeStringField("type", "array");
      out.writeObjectFieldStart("items");
      write(ResultType.content(type));
      out.writeEndObject();
    } else {
      throw new IllegalArgumentException("no results can be of " + type);
    }
  }

  private void plain(Class<?> type) throws IOException {
    if (type == boolean.class || type == Boolean.class) {
      out.writeStringField("type", "boolean");
    } else if (Set.of(int.class, Integer.class, long.class, Long.class).contains(type)) {
      out.writeStringField("type", "integer");
    } else if (type == double.class || type == Double.class) {
      number();
    } else if (type.isEnum()) {
      words(type);
    } else if (type.isRecord()) {
      record(type);
    } else if (type.isSealed()) {
      out.writeStringField("$ref", definitions.refer(type));
    } else {
      text(type);
    }
  }

  /** A number that is none is told as null. */
  private void number() throws IOException {
    out.writeArrayFieldStart("type");
    out.writeString("number");
    out.writeString("null");
    out.writeEndArray();
  }

  private void words(Class<?> type) throws IOException {
    Set<String> words = new LinkedHashSet<>();
    for (Object constant : type.getEnumConstants()) {
      words.add(RecordJson.word((Enum<?>) constant));
    }
    out.writeArrayFieldStart("enum");
    for (String word : words) {
      out.writeString(word);
    }
    out.writeEndArray();
  }

  private void text(Class<?> type) throws IOException {
    out.writeStringField("type", "string");
    if (type == LocalDate.class) {
      out.writeStringField("format", "date");
    } else if (type == Instant.class) {
      out.writeStringField("format", "date-time");
    }
  }

  private void record(Class<?> type) throws IOException {
    switch (RecordForm.of(type)) {
      case FIGURE -> out.writeStringField("$ref", "#/$defs/" + FIGURE);
      case OUTCOME -> out.writeStringField("$ref", "#/$defs/" + OUTCOME);
      case IN_UNIT, RANGE -> out.writeStringField("$ref", "#/$defs/" + RANGE);
      case CITATION, ID -> out.writeStringField("type", "string");
      case OBJECT -> out.writeStringField("$ref", definitions.refer(type));
    }
  }

  void anyOf(List<Class<?>> types) throws IOException {
    out.writeArrayFieldStart("anyOf");
    for (Class<?> type : types) {
      out.writeStartObject();
      write(type);
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  /** Defines what ranges and figures have in common, whatever they are of. */
  void shared() throws IOException {
    bounded(RANGE, "A value with its bounds.", List.of());
    bounded(OUTCOME, "A value that was computed, as its working ends in it.", List.of(BASIS));
    bounded(FIGURE, "A value that was computed, with its bounds.", List.of(BASIS, WORKING));
  }

  private void bounded(String name, String about, List<String> more) throws IOException {
    List<String> keys = Stream.of(BOUNDS, more).flatMap(List::stream).toList();
    out.writeObjectFieldStart(name);
    out.writeStringField("description", about);
    out.writeStringField("type", "object");
    out.writeBooleanField("additionalProperties", false);
    out.writeObjectFieldStart("properties");
    for (String key : keys) {
      out.writeObjectFieldStart(key);
      out.writeStringField("description", ABOUT.get(key));
      if (BOUNDS.contains(key)) {
        number();
      } else {
        write(key.equals(BASIS) ? Basis.class : String.class);
      }
      out.writeEndObject();
    }
    out.writeEndObject();
    out.writeArrayFieldStart("required");
    for (String key : keys) {
      out.writeString(key);
    }
    out.writeEndArray();
    out.writeEndObject();
  }
}
