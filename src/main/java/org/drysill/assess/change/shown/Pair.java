package org.drysill.assess.change.shown;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;

/**
 * A figure at both visits.
 *
 * @param before at the earlier visit
 * @param after at the later visit
 */
public record Pair(Figure before, Figure after) {
  private static final String ERRORS =
      "Bounds: errors of the two visits, counted as independent, as root of the sum of squares.";

  /** After less before. */
  public double difference() {
    return after.likely() - before.likely();
  }

  /** Error of the difference: half the widths of both bounds as root of the sum of squares. */
  public double error() {
    return Math.hypot(half(before.value()), half(after.value()));
  }

  /**
   * After less before as a figure.
   *
   * @param id its id
   * @param name what it is
   * @param unit its unit
   * @param symbol of what is compared, such as {@code Δp}
   */
  public Figure change(String id, String name, Unit unit, String symbol) {
    return figure(
        id,
        name,
        Range.around(difference(), error()),
        unit,
        symbol + "2 − " + symbol + "1",
        symbol);
  }

  /**
   * The difference as a share of what was there before; empty where that cannot be told from none.
   */
  public Optional<Figure> share(String id, String name, String symbol) {
    double was = before.likely();
    if (was <= half(before.value())) {
      return Optional.empty();
    }
    double error =
        Math.hypot(half(after.value()) / was, after.likely() * half(before.value()) / (was * was));
    return Optional.of(
        figure(
            id,
            name,
            Range.around(difference() / was, error),
            Unit.PERCENT,
            "(" + symbol + "2 − " + symbol + "1) / " + symbol + "1",
            symbol));
  }

  private Figure figure(
      String id, String name, Range value, Unit unit, String formula, String symbol) {
    return new Figure(
        id,
        name,
        value,
        unit,
        Basis.CALCULATED,
        () ->
            new Working(
                formula,
                List.of(Input.of(symbol + "1", before), Input.of(symbol + "2", after)),
                List.of(),
                Optional.of(ERRORS)));
  }

  private static double half(Range range) {
    return (range.high() - range.low()) / 2;
  }
}
