package org.drysill.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.RecordParts;
import org.drysill.yaml.Worded;

/**
 * Writes records as JSON, component by component. {@link TypeSchema} says the same of types that
 * this says of values.
 */
final class RecordJson {
  /** More digits than any reading has. */
  private static final MathContext DIGITS = new MathContext(5);

  private static final double ALL_DIGITS = 1e5;

  private final JsonGenerator json;

  RecordJson(JsonGenerator json) {
    this.json = json;
  }

  /** A key with its value; nothing at all for an absent one. */
  private void field(String key, Object value) throws IOException {
    if (value instanceof Optional<?> optional) {
      if (optional.isPresent()) {
        field(key, optional.get());
      }
    } else if (value instanceof Figure figure) {
      json.writeFieldName(JsonUnit.of(figure.unit()).key(key));
      figure(figure);
    } else if (value instanceof Outcome end) {
      json.writeFieldName(JsonUnit.of(end.figure().unit()).key(key));
      value(end);
    } else if (value instanceof InUnit bare) {
      JsonUnit unit = JsonUnit.of(bare.unit());
      json.writeFieldName(unit.key(key));
      range(bare.value(), unit.factor());
    } else if (!(value instanceof OptionalDouble absent) || absent.isPresent()) {
      json.writeFieldName(key);
      value(value);
    }
  }

  void value(Object value) throws IOException {
    if (value instanceof Optional<?> optional) {
      optionalValue(optional);
    } else if (value instanceof Iterable<?> many) {
      array(many);
    } else if (value instanceof Record record) {
      record(record);
    } else {
      scalar(value);
    }
  }

  private void optionalValue(Optional<?> optional) throws IOException {
    if (optional.isPresent()) {
      value(optional.get());
    } else {
      json.writeNull();
    }
  }

  private void scalar(Object value) throws IOException {
    if (value instanceof Double number) {
      number(number);
    } else if (value instanceof OptionalDouble number && number.isPresent()) {
      number(number.getAsDouble());
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Long number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean flag) {
      json.writeBoolean(flag);
    } else if (value instanceof Enum<?> constant) {
      json.writeString(word(constant));
    } else {
      json.writeString(String.valueOf(value));
    }
  }

  /** A constant by the word of its trade. */
  static String word(Enum<?> constant) {
    return constant instanceof Worded worded
        ? worded.word()
        : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void array(Iterable<?> many) throws IOException {
    json.writeStartArray();
    for (Object one : many) {
      value(one);
    }
    json.writeEndArray();
  }

  /** What the survey names is called by its id there; a citation by its line of text. */
  private void record(Record record) throws IOException {
    switch (RecordForm.of(record.getClass())) {
      case FIGURE -> figure((Figure) record);
      case OUTCOME -> outcome(((Outcome) record).figure());
      case IN_UNIT -> throw new IllegalArgumentException("a bare value needs a key for its unit");
      case RANGE -> range(record instanceof Quantity q ? q.range() : (Range) record, 1);
      case CITATION -> json.writeString(line((Citation) record));
      case ID -> json.writeString(record instanceof RoomFacts room ? room.id() : id(record));
      case OBJECT -> {
        json.writeStartObject();
        parts(record);
        json.writeEndObject();
      }
    }
  }

  private static String line(Citation citation) {
    return citation.text() + " (" + citation.how().word() + ")";
  }

  private void parts(Record record) throws IOException {
    for (ResultKey key : ResultKey.of(record.getClass())) {
      Object value = key.part().in(record);
      if (key.beside()) {
        parts((Record) value);
      } else {
        field(key.name(), value);
      }
    }
  }

  private static String id(Record record) {
    return RecordParts.of(record).stream()
        .filter(part -> part.name().equals("id"))
        .map(part -> String.valueOf(part.in(record)))
        .findFirst()
        .orElseThrow();
  }

  /** A figure: its range in the unit of its key, on what it rests, and where its working is. */
  private void figure(Figure figure) throws IOException {
    json.writeStartObject();
    body(figure);
    json.writeStringField("working", figure.id());
    json.writeEndObject();
  }

  private void outcome(Figure figure) throws IOException {
    json.writeStartObject();
    body(figure);
    json.writeEndObject();
  }

  private void body(Figure figure) throws IOException {
    bounds(figure.value(), JsonUnit.of(figure.unit()).factor());
    json.writeStringField("basis", word(figure.basis()));
  }

  private void range(Range range, double factor) throws IOException {
    json.writeStartObject();
    bounds(range, factor);
    json.writeEndObject();
  }

  private void bounds(Range range, double factor) throws IOException {
    json.writeFieldName("low");
    number(range.low() * factor);
    json.writeFieldName("likely");
    number(range.likely() * factor);
    json.writeFieldName("high");
    number(range.high() * factor);
  }

  /** JSON has no infinity; a number that is none is absent. */
  private void number(double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumber(rounded(value).stripTrailingZeros());
    } else {
      json.writeNull();
    }
  }

  /** Whole units stay, however many. */
  private static BigDecimal rounded(double value) {
    BigDecimal exact = new BigDecimal(value);
    return Math.abs(value) < ALL_DIGITS
        ? exact.round(DIGITS)
        : exact.setScale(0, RoundingMode.HALF_UP);
  }
}
