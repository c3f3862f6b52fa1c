package org.drysill.yaml;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The JSON Schema (draft 2020-12) of a record, for editors: generated from the same {@link Key}s
 * that the reader obeys, so the two cannot drift apart.
 */
public final class JsonSchema {
  private final JsonGenerator out;
  private final ValueSchema values;
  private final Set<Class<? extends Record>> met = new LinkedHashSet<>();
  private final Deque<Class<? extends Record>> waiting = new ArrayDeque<>();

  private JsonSchema(JsonGenerator out, Vocabularies vocabularies) {
    this.out = out;
    this.values = new ValueSchema(out, vocabularies, this::refer);
  }

  /**
   * The schema as indented JSON with a line end at its end.
   *
   * @param type the record of the whole file
   * @param vocabularies the words that texts with a vocabulary may be
   * @param title the title of the schema
   */
  public static String of(Class<? extends Record> type, Vocabularies vocabularies, String title) {
    StringWriter text = new StringWriter();
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
      out.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
      new JsonSchema(out, vocabularies).write(type, title);
    } catch (IOException impossible) {
      throw new UncheckedIOException("a string takes every text", impossible);
    }
    return text + "\n";
  }

  private void write(Class<? extends Record> type, String title) throws IOException {
    out.writeStartObject();
    out.writeStringField("$schema", "https://json-schema.org/draft/2020-12/schema");
    out.writeStringField("title", title);
    out.writeStringField("$ref", refer(type));
    out.writeObjectFieldStart("$defs");
    while (!waiting.isEmpty()) {
      define(waiting.remove());
    }
    out.writeEndObject();
    out.writeEndObject();
  }

  /** The reference to a record's definition, which is written in its turn. */
  private String refer(Class<? extends Record> type) {
    if (met.add(type)) {
      waiting.add(type);
    }
    return "#/$defs/" + type.getSimpleName();
  }

  private void define(Class<? extends Record> type) throws IOException {
    out.writeObjectFieldStart(type.getSimpleName());
    Shorthand shorthand = type.getAnnotation(Shorthand.class);
    if (shorthand == null) {
      object(type);
    } else {
      out.writeArrayFieldStart("anyOf");
      out.writeStartObject();
      Field field = field(type, shorthand.value());
      values.write(field.shape(), field.key());
      out.writeEndObject();
      out.writeStartObject();
      object(type);
      out.writeEndObject();
      out.writeEndArray();
    }
    out.writeEndObject();
  }

  private static Field field(Class<? extends Record> type, String component) {
    return Field.of(type).stream()
        .filter(f -> f.name().equals(Field.snake(component)))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(type + " has no " + component));
  }

  private void object(Class<? extends Record> type) throws IOException {
    List<Field> fields = Field.of(type);
    out.writeStringField("type", "object");
    out.writeBooleanField("additionalProperties", false);
    String[] required =
        fields.stream().filter(Field::isRequired).map(Field::name).toArray(String[]::new);
    out.writeArrayFieldStart("required");
    for (String name : required) {
      out.writeString(name);
    }
    out.writeEndArray();
    out.writeObjectFieldStart("properties");
    for (Field field : fields) {
      out.writeObjectFieldStart(field.name());
      out.writeStringField("description", Description.of(field));
      if (!field.key().example().isEmpty()) {
        out.writeArrayFieldStart("examples");
        out.writeString(field.key().example());
        out.writeEndArray();
      }
      values.write(field.shape(), field.key());
      out.writeEndObject();
    }
    out.writeEndObject();
  }
}
