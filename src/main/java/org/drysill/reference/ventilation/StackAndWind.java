package org.drysill.reference.ventilation;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * Coefficients of the leakage model by stack and wind.
 *
 * @param exponent exponent of the flow through leaks by pressure
 * @param airDensity density of air, kg/m3
 * @param stack stack coefficients by storeys; past the table the last holds
 * @param wind wind coefficients by shelter and storeys; past the table the last holds
 * @param source where they come from
 * @param note what the reader should know about them
 */
public record StackAndWind(
    @Key(about = "Exponent of the flow by pressure", min = 0.5, max = 1, example = "0.65")
        double exponent,
    @Key(about = "Density of air, kg/m3", min = 1, max = 1.4, example = "1.2") double airDensity,
    @Key(about = "Stack coefficients by storeys", required = true) List<Stack> stack,
    @Key(about = "Wind coefficients by shelter and storeys", required = true) List<Wind> wind,
    @Key(about = "Where they come from") Citation source,
    @Key(about = "What the reader should know about them") Optional<String> note) {
  /** Copies the lists; refuses a table that leaves a case out. */
  public StackAndWind {
    stack = List.copyOf(stack);
    wind = List.copyOf(wind);
    Rows.every("wind", WindShelter.values(), wind.stream().map(Wind::shelter).toList());
  }

  /**
   * Stack coefficient.
   *
   * @param storeys number of storeys
   * @param coefficient Cs, (l/s)2/(cm4.K)
   */
  public record Stack(
      @Key(about = "Number of storeys", min = 1, example = "2") int storeys,
      @Key(about = "Cs, (l/s)2/(cm4.K)", min = 0, example = "0.00029") double coefficient) {}

  /**
   * Wind coefficient.
   *
   * @param shelter how much wind the home gets
   * @param storeys number of storeys
   * @param coefficient Cw, (l/s)2/(cm4.(m/s)2)
   */
  public record Wind(
      @Key(about = "How much wind the home gets", example = "normal") WindShelter shelter,
      @Key(about = "Number of storeys", min = 1, example = "2") int storeys,
      @Key(about = "Cw, (l/s)2/(cm4.(m/s)2)", min = 0, example = "0.000231") double coefficient) {}

  /** Cs of a home of so many storeys. */
  public double stackOf(int storeys) {
    return stack.stream()
        .filter(row -> row.storeys() <= storeys)
        .reduce((lower, higher) -> higher)
        .map(Stack::coefficient)
        .orElse(stack.get(0).coefficient());
  }

  /** Cw of a home of so many storeys and this shelter. */
  public double windOf(WindShelter shelter, int storeys) {
    List<Wind> rows = wind.stream().filter(row -> row.shelter() == shelter).toList();
    return rows.stream()
        .filter(row -> row.storeys() <= storeys)
        .reduce((lower, higher) -> higher)
        .map(Wind::coefficient)
        .orElse(rows.get(0).coefficient());
  }
}
