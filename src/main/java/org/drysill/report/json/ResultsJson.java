package org.drysill.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Working;
import org.drysill.yaml.RecordParts;

/** The results file: every figure that was computed, by the names of the survey format. */
public final class ResultsJson {
  private ResultsJson() {}

  /**
   * Writes results.
   *
   * @param sections the sections in their order, by key: records, lists, maps, figures
   * @param figures every figure whose working is to be told
   * @return UTF-8 text
   */
  public static byte[] of(Map<String, Object> sections, List<Figure> figures) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    JsonFactory factory =
        JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();
    try (JsonGenerator json = factory.createGenerator(bytes)) {
      json.setPrettyPrinter(new OneThingALine());
      RecordJson records = new RecordJson(json);
      json.writeStartObject();
      for (Map.Entry<String, Object> section : sections.entrySet()) {
        records.field(section.getKey(), section.getValue());
      }
      json.writeArrayFieldStart("working");
      Map<String, Figure> told = new HashMap<>();
      figures.forEach(figure -> told.put(figure.id(), figure));
      for (Figure figure : figures) {
        working(json, records, figure, told);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /** The parts of a record by their keys, to be written beside others. */
  public static Map<String, Object> parts(Record record) {
    Map<String, Object> parts = new LinkedHashMap<>();
    RecordParts.of(record).forEach(p -> parts.put(RecordJson.snake(p.name()), p.in(record)));
    return parts;
  }

  private static void working(
      JsonGenerator json, RecordJson records, Figure figure, Map<String, Figure> told)
      throws IOException {
    Working working = figure.working();
    json.writeStartObject();
    json.writeStringField("id", figure.id());
    json.writeStringField("name", figure.name());
    json.writeStringField("formula", working.formula());
    records.result(figure);
    json.writeArrayFieldStart("inputs");
    for (Working.Input input : working.inputs()) {
      input(json, records, input, isTold(input, told));
    }
    json.writeEndArray();
    records.field("sources", working.sources());
    records.field("note", working.note());
    json.writeEndObject();
  }

  /** True where the working of the same figure, by the same name, stands in the list. */
  private static boolean isTold(Working.Input input, Map<String, Figure> told) {
    Optional<Figure> figure = input.figure().map(told::get);
    return figure.isPresent()
        && figure.get().name().equals(input.name())
        && figure.get().value().equals(input.value())
        && figure.get().unit() == input.unit()
        && figure.get().basis() == input.basis();
  }

  private static void input(
      JsonGenerator json, RecordJson records, Working.Input input, boolean isTold)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("symbol", input.symbol());
    if (!isTold) {
      json.writeStringField("name", input.name());
      json.writeFieldName(JsonUnit.of(input.unit()).key("value"));
      records.range(input.value(), input.unit());
      records.field("basis", input.basis());
    }
    records.field("working", input.figure());
    json.writeEndObject();
  }
}
