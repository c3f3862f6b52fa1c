package org.drysill.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;

/**
 * Breaks lines between sections, their parts and what these list, such as a finding, a place or a
 * working, and nowhere deeper: a text that can be read, searched and compared line by line, of half
 * the size.
 */
final class OneThingALine implements PrettyPrinter {
  private static final int BROKEN = 3;

  private int depth;

  @Override
  public void writeRootValueSeparator(JsonGenerator json) throws IOException {
    json.writeRaw('\n');
  }

  @Override
  public void writeStartObject(JsonGenerator json) throws IOException {
    json.writeRaw('{');
    depth++;
  }

  @Override
  public void beforeObjectEntries(JsonGenerator json) throws IOException {
    breakLine(json);
  }

  @Override
  public void writeObjectFieldValueSeparator(JsonGenerator json) throws IOException {
    json.writeRaw(':');
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator json) throws IOException {
    json.writeRaw(',');
    breakLine(json);
  }

  @Override
  public void writeEndObject(JsonGenerator json, int entries) throws IOException {
    end(json, entries, '}');
  }

  @Override
  public void writeStartArray(JsonGenerator json) throws IOException {
    json.writeRaw('[');
    depth++;
  }

  @Override
  public void beforeArrayValues(JsonGenerator json) throws IOException {
    breakLine(json);
  }

  @Override
  public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
    json.writeRaw(',');
    breakLine(json);
  }

  @Override
  public void writeEndArray(JsonGenerator json, int values) throws IOException {
    end(json, values, ']');
  }

  private void end(JsonGenerator json, int count, char bracket) throws IOException {
    if (count > 0) {
      breakLine(json);
    }
    depth--;
    json.writeRaw(bracket);
  }

  private void breakLine(JsonGenerator json) throws IOException {
    if (depth <= BROKEN) {
      json.writeRaw('\n');
    }
  }
}
