package org.drysill.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Unit;

/**
 * The JSON Schema (draft 2020-12) of the results file, for whoever reads it by a program: made from
 * the records that {@link ResultsJson} writes, so that it follows them.
 */
public final class ResultsSchema {
  private static final List<JsonUnit> NO_UNIT = List.of(JsonUnit.of(Unit.COUNT));

  private final JsonGenerator out;
  private final ResultTexts texts;
  private final Definitions definitions = new Definitions();
  private final TypeSchema types;

  private ResultsSchema(JsonGenerator out, ResultTexts texts) {
    this.out = out;
    this.texts = texts;
    this.types = new TypeSchema(out, definitions);
  }

  /** The schema as indented JSON with a line end at its end. */
  public static String text() {
    return of(Results.class, ResultTexts.bundled());
  }

  static String of(Class<? extends Record> results, ResultTexts texts) {
    StringWriter text = new StringWriter();
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
      out.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
      new ResultsSchema(out, texts).write(results);
    } catch (IOException impossible) {
      throw new UncheckedIOException("a string takes every text", impossible);
    }
    return text + "\n";
  }

  private void write(Class<? extends Record> results) throws IOException {
    out.writeStartObject();
    out.writeStringField("$schema", "https://json-schema.org/draft/2020-12/schema");
    out.writeStringField("title", "Results of the survey of a damp home, format 1");
    out.writeStringField("$ref", definitions.refer(results));
    out.writeObjectFieldStart("$defs");
    types.shared();
    for (Optional<Class<?>> next = definitions.next(); next.isPresent(); ) {
      define(next.get());
      next = definitions.next();
    }
    out.writeEndObject();
    out.writeEndObject();
  }

  private void define(Class<?> type) throws IOException {
    out.writeObjectFieldStart(definitions.name(type));
    out.writeStringField("description", texts.about(type));
    if (type.isSealed()) {
      types.anyOf(List.of(type.getPermittedSubclasses()));
    } else {
      object(type);
    }
    out.writeEndObject();
  }

  private void object(Class<?> type) throws IOException {
    List<List<String>> required = new ArrayList<>();
    out.writeStringField("type", "object");
    out.writeBooleanField("additionalProperties", false);
    out.writeObjectFieldStart("properties");
    properties(type, required);
    out.writeEndObject();
    out.writeArrayFieldStart("required");
    for (List<String> names : required) {
      if (names.size() == 1) {
        out.writeString(names.get(0));
      }
    }
    out.writeEndArray();
    oneOfEach(required.stream().filter(names -> names.size() > 1).toList());
  }

  /** A figure whose unit differs stands under one of several keys. */
  private void oneOfEach(List<List<String>> choices) throws IOException {
    if (choices.isEmpty()) {
      return;
    }
    out.writeArrayFieldStart("allOf");
    for (List<String> names : choices) {
      out.writeStartObject();
      out.writeArrayFieldStart("oneOf");
      for (String name : names) {
        out.writeStartObject();
        out.writeArrayFieldStart("required");
        out.writeString(name);
        out.writeEndArray();
        out.writeEndObject();
      }
      out.writeEndArray();
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void properties(Class<?> type, List<List<String>> required) throws IOException {
    for (ResultKey key : ResultKey.of(type)) {
      if (key.beside()) {
        properties(key.part().type(), required);
      } else {
        List<String> names = property(type, key);
        if (!ResultType.of(key.part()).mayBeAbsent()) {
          required.add(names);
        }
      }
    }
  }

  /** Writes a key, as many times as it has units, and tells by which names. */
  private List<String> property(Class<?> type, ResultKey key) throws IOException {
    ResultType value = ResultType.of(key.part());
    Map<String, List<JsonUnit>> names = new LinkedHashMap<>();
    for (JsonUnit unit : value.holdsFigures() ? texts.units(type, key.part().name()) : NO_UNIT) {
      String name = value.hasUnitInKey() ? unit.key(key.name()) : key.name();
      names.computeIfAbsent(name, n -> new ArrayList<>()).add(unit);
    }
    for (Map.Entry<String, List<JsonUnit>> name : names.entrySet()) {
      out.writeObjectFieldStart(name.getKey());
      out.writeStringField(
          "description",
          texts.about(type, key.part().name(), value.holdsFigures() ? name.getValue() : List.of()));
      types.write(value.present());
      out.writeEndObject();
    }
    return List.copyOf(names.keySet());
  }
}
