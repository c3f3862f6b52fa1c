package org.drysill.assess;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;

/**
 * How a figure came about, so that someone else can check it.
 *
 * @param formula the formula in symbols, such as {@code q = max(q_bedrooms, 0.3 × A)}
 * @param inputs what was put in
 * @param sources the clauses that say so
 * @param note what else a checker should know
 */
public record Working(
    String formula, List<Input> inputs, List<Citation> sources, Optional<String> note) {
  /** Copies the lists. */
  public Working {
    inputs = List.copyOf(inputs);
    sources = List.copyOf(sources);
  }

  /**
   * One value put into a formula.
   *
   * @param symbol its symbol in the formula
   * @param name what it is
   * @param value its value
   * @param unit its unit
   * @param basis on what it rests
   * @param figure the id of the figure that it is, where it has a working of its own
   */
  public record Input(
      String symbol, String name, Range value, Unit unit, Basis basis, Optional<String> figure) {
    /** A value that is itself a figure with a working. */
    public static Input of(String symbol, Figure figure) {
      return new Input(
          symbol,
          figure.name(),
          figure.value(),
          figure.unit(),
          figure.basis(),
          Optional.of(figure.id()));
    }

    /** A value that stands for itself. */
    public static Input of(String symbol, String name, Range value, Unit unit, Basis basis) {
      return new Input(symbol, name, value, unit, basis, Optional.empty());
    }
  }
}
