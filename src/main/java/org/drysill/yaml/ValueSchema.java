package org.drysill.yaml;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Writes the part of a schema that says which values may stand at a key. */
final class ValueSchema {
  private static final String QUANTITY = "^[^0-9½¼¾⅓⅔⅛⅜⅝⅞A-Za-z]*([A-Z]{3} ?)?[0-9½¼¾⅓⅔⅛⅜⅝⅞].*$";
  private static final String DAY = "^(19|20)[0-9]{2}-[0-9]{2}-[0-9]{2}$";
  private static final String MOMENT =
      "^(19|20)[0-9]{2}-[0-9]{2}-[0-9]{2}([Tt ] *[0-9]{1,2}:[0-9]{2}(:[0-9]{2})?)?$";

  private final JsonGenerator out;
  private final Vocabularies vocabularies;
  private final Function<Class<? extends Record>, String> refer;

  ValueSchema(
      JsonGenerator out,
      Vocabularies vocabularies,
      Function<Class<? extends Record>, String> refer) {
    this.out = out;
    this.vocabularies = vocabularies;
    this.refer = refer;
  }

  /** Writes into the object that is open. */
  void write(Shape shape, Key key) throws IOException {
    switch (shape.kind()) {
      case OPTIONAL -> write(shape.unwrapped(), key);
      case TEXT -> text(key);
      case FLAG -> choices(List.of("yes", "no", "true", "false", "y", "n"));
      case WHOLE -> whole(key);
      case DECIMAL, QUANTITY -> quantity(key);
      case DAY -> pattern(DAY);
      case MOMENT -> pattern(MOMENT);
      case WORD -> word(shape);
      case RECORD -> out.writeStringField("$ref", refer.apply(shape.recordType()));
      case LIST -> list(shape, key);
      case MAP -> map(shape, key);
    }
  }

  private void text(Key key) throws IOException {
    List<String> words = vocabularies.of(key.vocabulary());
    if (words.isEmpty()) {
      types("string", "number", "boolean");
    } else {
      choices(words);
    }
  }

  private void word(Shape shape) throws IOException {
    Set<String> words = new LinkedHashSet<>();
    shape.words().forEach(w -> words.add(w.word()));
    shape.words().forEach(w -> words.addAll(w.synonyms()));
    choices(words);
  }

  /** The words; where yes and no are among them, the truth values that YAML makes of these too. */
  private void choices(Iterable<String> words) throws IOException {
    boolean truth = false;
    out.writeArrayFieldStart("enum");
    for (String word : words) {
      out.writeString(word);
      truth |= word.equals("true");
    }
    if (truth) {
      out.writeBoolean(true);
      out.writeBoolean(false);
    }
    out.writeEndArray();
  }

  private void whole(Key key) throws IOException {
    out.writeStringField("type", "integer");
    bounds(key);
  }

  private void quantity(Key key) throws IOException {
    out.writeArrayFieldStart("anyOf");
    out.writeStartObject();
    out.writeStringField("type", "number");
    bounds(key);
    out.writeEndObject();
    out.writeStartObject();
    pattern(QUANTITY);
    out.writeEndObject();
    out.writeEndArray();
  }

  private void bounds(Key key) throws IOException {
    if (Double.isFinite(key.min())) {
      out.writeFieldName("minimum");
      out.writeNumber(Bounds.number(key.min()));
    }
    if (Double.isFinite(key.max())) {
      out.writeFieldName("maximum");
      out.writeNumber(Bounds.number(key.max()));
    }
  }

  private void pattern(String pattern) throws IOException {
    out.writeStringField("type", "string");
    out.writeStringField("pattern", pattern);
  }

  private void types(String... types) throws IOException {
    out.writeArrayFieldStart("type");
    for (String type : types) {
      out.writeString(type);
    }
    out.writeEndArray();
  }

  private void list(Shape shape, Key key) throws IOException {
    out.writeStringField("type", "array");
    if (key.size() > 0) {
      out.writeNumberField("minItems", key.size());
      out.writeNumberField("maxItems", key.size());
    } else if (key.required()) {
      out.writeNumberField("minItems", 1);
    }
    content("items", shape, key);
  }

  private void map(Shape shape, Key key) throws IOException {
    out.writeStringField("type", "object");
    List<String> words = vocabularies.of(key.vocabulary());
    if (!words.isEmpty()) {
      out.writeObjectFieldStart("propertyNames");
      choices(words);
      out.writeEndObject();
    }
    content("additionalProperties", shape, key);
  }

  private void content(String name, Shape shape, Key key) throws IOException {
    out.writeObjectFieldStart(name);
    write(shape.content(), key);
    out.writeEndObject();
  }
}
