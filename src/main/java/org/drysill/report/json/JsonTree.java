package org.drysill.report.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a results file back: objects as maps, arrays as lists, texts as such, and every other value
 * as it is written, so that two files can be compared to the last digit.
 */
public final class JsonTree {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private JsonTree() {}

  /** A number, true, false or null, as it is written. */
  public record Literal(String written) {
    @Override
    public String toString() {
      return written;
    }
  }

  /**
   * Reads a file.
   *
   * @param json its bytes
   * @throws IOException where it is no JSON, or nested or long beyond measure
   */
  public static Object read(byte[] json) throws IOException {
    try (JsonParser parser = FACTORY.createParser(json)) {
      Object tree = value(parser, parser.nextToken());
      if (parser.nextToken() != null) {
        throw new IOException("more than one value");
      }
      return tree;
    }
  }

  private static Object value(JsonParser parser, JsonToken token) throws IOException {
    if (token == JsonToken.START_OBJECT) {
      Map<String, Object> object = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String key = parser.currentName();
        object.put(key, value(parser, parser.nextToken()));
      }
      return object;
    }
    if (token == JsonToken.START_ARRAY) {
      List<Object> array = new ArrayList<>();
      for (JsonToken next = parser.nextToken();
          next != JsonToken.END_ARRAY;
          next = parser.nextToken()) {
        array.add(value(parser, next));
      }
      return array;
    }
    if (token == null) {
      throw new IOException("no value");
    }
    return token == JsonToken.VALUE_STRING ? parser.getText() : new Literal(parser.getText());
  }
}
