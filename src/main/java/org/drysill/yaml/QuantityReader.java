package org.drysill.yaml;

import java.util.Optional;
import org.drysill.yaml.ProblemList.Finding;
import org.drysill.yaml.units.QuantityException;
import org.drysill.yaml.units.QuantityText;

/** Reads quantities and plain numbers within the bounds of their keys. */
final class QuantityReader {
  private final Complaints complaints;

  QuantityReader(Complaints complaints) {
    this.complaints = complaints;
  }

  /** A quantity; where an uncertainty reaches past what is possible, it ends there. */
  Optional<Object> read(Shape shape, String text, Spot spot) {
    return parse(shape, text, spot).flatMap(parsed -> within(parsed, spot)).map(q -> q);
  }

  /** A number without spread, in the kept unit. */
  Optional<Object> exact(Shape shape, String text, Spot spot) {
    Optional<Quantity> quantity = parse(shape, text, spot).flatMap(parsed -> within(parsed, spot));
    if (quantity.filter(Quantity::isRange).isPresent()) {
      return complaints.wrong(YamlCode.NOT_A_NUMBER, spot, shape, Finding.quote(text));
    }
    return quantity.map(Quantity::value);
  }

  private Optional<Quantity> within(QuantityText parsed, Spot spot) {
    Quantity q = parsed.quantity();
    double low = parsed.uncertain() ? q.value() : q.low();
    double high = parsed.uncertain() ? q.value() : q.high();
    if (!Bounds.isPossible(low, q.value(), high, spot, complaints)) {
      return Optional.empty();
    }
    return Optional.of(parsed.uncertain() ? cut(q, spot.key()) : q);
  }

  private static Quantity cut(Quantity q, Key key) {
    double least = Math.min(q.value(), Bounds.kept(key, key.min()));
    double most = Math.max(q.value(), Bounds.kept(key, key.max()));
    return new Quantity(q.value(), Math.max(q.low(), least), Math.min(q.high(), most), q.written());
  }

  private Optional<QuantityText> parse(Shape shape, String text, Spot spot) {
    try {
      QuantityText parsed = QuantityText.of(text, spot.key().dimension(), spot.key().unit());
      if (isFinite(parsed.quantity())) {
        return Optional.of(parsed);
      }
      complaints.wrong(
          YamlCode.NOT_A_NUMBER, spot, shape, Finding.quote(text) + " (the number is too large)");
      return Optional.empty();
    } catch (QuantityException fault) {
      complaints.wrong(
          code(fault.fault()), spot, shape, Finding.quote(text) + " (" + fault.hint() + ")");
      return Optional.empty();
    }
  }

  private static boolean isFinite(Quantity q) {
    return Double.isFinite(q.low()) && Double.isFinite(q.value()) && Double.isFinite(q.high());
  }

  private static YamlCode code(QuantityException.Fault fault) {
    return switch (fault) {
      case NOT_A_NUMBER -> YamlCode.NOT_A_NUMBER;
      case AMBIGUOUS -> YamlCode.AMBIGUOUS_NUMBER;
      case WRONG_UNIT -> YamlCode.WRONG_UNIT;
      case BACKWARDS -> YamlCode.BACKWARDS;
    };
  }
}
