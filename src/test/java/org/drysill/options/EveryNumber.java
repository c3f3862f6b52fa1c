package org.drysill.options;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.assess.Figure;
import org.drysill.physics.Range;
import org.drysill.yaml.RecordParts;

/** Goes through results down to their last number and tells what cannot be one. */
final class EveryNumber {
  private final IdentityHashMap<Object, Object> seen = new IdentityHashMap<>();
  private final List<String> faults = new ArrayList<>();

  private EveryNumber() {}

  /** What is not finite, and chances that are none, by where they stand. */
  static List<String> faults(Record results) {
    EveryNumber every = new EveryNumber();
    every.value(results, results.getClass().getSimpleName());
    return every.faults;
  }

  private void value(Object value, String at) {
    if (value instanceof Double number) {
      finite(number, at);
    } else if (value instanceof OptionalDouble number) {
      number.ifPresent(n -> finite(n, at));
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(one -> value(one, at));
    } else if (value instanceof Iterable<?> many) {
      many.forEach(one -> value(one, at));
    } else if (value instanceof Map<?, ?> map) {
      map.values().forEach(one -> value(one, at));
    } else if (value instanceof Record record && seen.put(record, record) == null) {
      record(record, at);
    }
  }

  private void record(Record record, String at) {
    if (record instanceof Range range) {
      finite(range.low(), at);
      finite(range.likely(), at);
      finite(range.high(), at);
    } else if (record instanceof Chance chance) {
      if (!(chance.share() >= 0 && chance.share() <= 1 && chance.error() >= 0)) {
        faults.add(at + " " + chance);
      }
    } else if (record instanceof Figure figure) {
      value(figure.value(), figure.id());
      value(figure.working().inputs(), figure.id());
    } else {
      RecordParts.of(record).forEach(part -> value(part.in(record), at + "." + part.name()));
    }
  }

  private void finite(double number, String at) {
    if (!Double.isFinite(number)) {
      faults.add(at + " " + number);
    }
  }
}
