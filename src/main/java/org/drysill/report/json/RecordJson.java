package org.drysill.report.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.logs.Trace;
import org.drysill.assess.model.HomeStates;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.RecordParts;
import org.drysill.yaml.Worded;

/** Writes records as JSON, component by component. */
final class RecordJson {
  /** More digits than any reading has. */
  private static final MathContext DIGITS = new MathContext(5);

  private static final double ALL_DIGITS = 1e5;

  /** What is no result: the home that all was told of, traces, what further steps reckon with. */
  private static final Set<Class<?>> NOT_TOLD = Set.of(Home.class, Trace.class, HomeStates.class);

  private static final Pattern HUMP = Pattern.compile("([a-z0-9])([A-Z])");

  private final JsonGenerator json;
  private final Map<String, String> keys = new HashMap<>();

  RecordJson(JsonGenerator json) {
    this.json = json;
  }

  /** A key with its value; nothing at all for an absent one. */
  void field(String key, Object value) throws IOException {
    if (value instanceof Optional<?> optional) {
      if (optional.isPresent()) {
        field(key, optional.get());
      }
    } else if (value instanceof Figure figure) {
      json.writeFieldName(JsonUnit.of(figure.unit()).key(key));
      figure(figure);
    } else if (!(value instanceof OptionalDouble absent) || absent.isPresent()) {
      json.writeFieldName(key);
      value(value);
    }
  }

  void value(Object value) throws IOException {
    if (value instanceof Optional<?> optional) {
      optionalValue(optional);
    } else if (value instanceof Figure figure) {
      figure(figure);
    } else if (value instanceof Range range) {
      range(range, 1);
    } else if (value instanceof Iterable<?> many) {
      array(many);
    } else if (value instanceof Map<?, ?> map) {
      object(map);
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
    } else if (value instanceof Verdict verdict) {
      json.writeString(verdict.name().toLowerCase(Locale.ROOT));
    } else if (value instanceof Worded word) {
      json.writeString(word.word());
    } else if (value instanceof Enum<?> constant) {
      json.writeString(constant.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    } else {
      json.writeString(String.valueOf(value));
    }
  }

  private void array(Iterable<?> many) throws IOException {
    json.writeStartArray();
    for (Object one : many) {
      value(one);
    }
    json.writeEndArray();
  }

  private void object(Map<?, ?> map) throws IOException {
    json.writeStartObject();
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      field(String.valueOf(entry.getKey()), entry.getValue());
    }
    json.writeEndObject();
  }

  /** What the survey names is called by its id there; a citation by its line of text. */
  private void record(Record record) throws IOException {
    if (record instanceof Citation citation) {
      json.writeString(citation.text() + " (" + citation.how().word() + ")");
    } else if (record instanceof Quantity quantity) {
      range(quantity.range(), 1);
    } else if (record instanceof RoomFacts room) {
      json.writeString(room.id());
    } else if (isOfTheSurvey(record) && id(record).isPresent()) {
      json.writeString(id(record).get());
    } else {
      json.writeStartObject();
      for (RecordParts.Part part : RecordParts.of(record)) {
        if (!NOT_TOLD.contains(part.type())) {
          field(keys.computeIfAbsent(part.name(), RecordJson::snake), part.in(record));
        }
      }
      json.writeEndObject();
    }
  }

  private static boolean isOfTheSurvey(Record record) {
    return record.getClass().getPackageName().startsWith("org.drysill.survey");
  }

  private static Optional<String> id(Record record) {
    return RecordParts.of(record).stream()
        .filter(part -> part.name().equals("id"))
        .map(part -> String.valueOf(part.in(record)))
        .findFirst();
  }

  /** A figure: its range in the unit of its key, on what it rests, and where its working is. */
  private void figure(Figure figure) throws IOException {
    json.writeStartObject();
    body(figure);
    json.writeStringField("working", figure.id());
    json.writeEndObject();
  }

  /** The figure that a working ends in, which need not be told where its working is. */
  void result(Figure figure) throws IOException {
    json.writeFieldName(JsonUnit.of(figure.unit()).key("result"));
    json.writeStartObject();
    body(figure);
    json.writeEndObject();
  }

  private void body(Figure figure) throws IOException {
    bounds(figure.value(), JsonUnit.of(figure.unit()).factor());
    json.writeStringField("basis", figure.basis().name().toLowerCase(Locale.ROOT));
  }

  /** A bare range in a unit that is converted like that of a figure. */
  void range(Range range, Unit unit) throws IOException {
    range(range, JsonUnit.of(unit).factor());
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
      json.writeNumber(rounded(new BigDecimal(value)).stripTrailingZeros());
    } else {
      json.writeNull();
    }
  }

  /** Whole units stay, however many. */
  private static BigDecimal rounded(BigDecimal value) {
    return Math.abs(value.doubleValue()) < ALL_DIGITS
        ? value.round(DIGITS)
        : value.setScale(0, RoundingMode.HALF_UP);
  }

  static String snake(String name) {
    return HUMP.matcher(name).replaceAll("$1_$2").toLowerCase(Locale.ROOT);
  }
}
