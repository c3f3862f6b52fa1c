package org.drysill.options;

/**
 * The parts of a global cost, EN 15459-1, each as money of today over the horizon, at likely values
 * [currency]. Savings are negative.
 *
 * <pre>
 * Cg = CI + Σ CI·d(k·life) + (upkeep + electricity + heat)·f(τ) − V·d(τ)
 * </pre>
 *
 * @param firstCost CI, what is paid at the start
 * @param replacements the same again whenever a life ends within the horizon
 * @param upkeep upkeep
 * @param electricity electricity
 * @param heat energy for heat, less what is saved
 * @param residualValue what the last purchases are still worth at the end; taken off, so negative
 */
public record CostParts(
    double firstCost,
    double replacements,
    double upkeep,
    double electricity,
    double heat,
    double residualValue) {
  /** No cost at all. */
  public static final CostParts NONE = new CostParts(0, 0, 0, 0, 0, 0);

  /** Both together. */
  public CostParts and(CostParts other) {
    return new CostParts(
        firstCost + other.firstCost,
        replacements + other.replacements,
        upkeep + other.upkeep,
        electricity + other.electricity,
        heat + other.heat,
        residualValue + other.residualValue);
  }

  /** The same with more to be spent on heat, or less [currency]. */
  public CostParts withMoreHeat(double more) {
    return new CostParts(firstCost, replacements, upkeep, electricity, heat + more, residualValue);
  }

  /** The global cost [currency]. */
  public double total() {
    return firstCost + replacements + upkeep + electricity + heat + residualValue;
  }
}
