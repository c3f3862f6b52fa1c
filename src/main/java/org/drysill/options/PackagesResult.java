package org.drysill.options;

import java.util.List;
import java.util.Optional;

/**
 * Every sensible combination of measures, by month at the likely values, and how sure the best are,
 * by month and hour by hour.
 *
 * @param measures how many measures were combined
 * @param evaluated how many packages were evaluated
 * @param rule the ranking rule in plain sentences
 * @param leftOut measures that were not combined, each with the reason
 * @param today the home as it is, a package without steps
 * @param best the best packages that the budget reaches, best first; none where nothing is lacking
 * @param beyondBudget the best of all, where the budget does not reach it
 * @param dryGlass the package that goes as far as the best and keeps glass driest, where another
 * @param onceTested the best of all once the safety test is passed that some of its measures need,
 *     {@link MeasurePackage#safe()} then; empty where the best needs none in any case, or needs one
 *     itself
 * @param front packages of which none is beaten in yearly cost, months of mould and air at once, by
 *     cost; then those shown that are not among them
 * @param doFirst the titles of measures in all of the best packages
 * @param comparedWith how many best packages the two lists go by
 * @param inNone measures in none of them, with the reason
 * @param budgets what sums of money buy
 * @param sureness how sure the ranking is and what makes it unsure; empty where no package is any
 *     good
 * @param limits what was not reckoned, in sentences
 */
public record PackagesResult(
    int measures,
    long evaluated,
    List<String> rule,
    List<String> leftOut,
    MeasurePackage today,
    List<MeasurePackage> best,
    Optional<MeasurePackage> beyondBudget,
    Optional<MeasurePackage> dryGlass,
    Optional<MeasurePackage> onceTested,
    List<FrontPoint> front,
    List<String> doFirst,
    int comparedWith,
    List<InNone> inNone,
    List<BudgetBuys> budgets,
    Optional<Sureness> sureness,
    List<String> limits) {
  /** Copies the lists. */
  public PackagesResult {
    rule = List.copyOf(rule);
    leftOut = List.copyOf(leftOut);
    best = List.copyOf(best);
    front = List.copyOf(front);
    doFirst = List.copyOf(doFirst);
    inNone = List.copyOf(inNone);
    budgets = List.copyOf(budgets);
    limits = List.copyOf(limits);
  }

  /**
   * A package on the front.
   *
   * @param name the name of one that is shown; empty for others
   * @param annualCost yearly cost over the horizon, likely [currency/a]
   * @param mouldMonths months at risk of mould that are left
   * @param lacksM3S air that is still lacking, likely [m³/s]
   * @param hourly hour by hour, for so many as were followed so
   */
  public record FrontPoint(
      String name,
      double annualCost,
      int mouldMonths,
      double lacksM3S,
      Optional<HourlySpread> hourly) {}

  /**
   * A measure in none of the best packages.
   *
   * @param title the measure
   * @param because the reason, to stand after "in none, because"
   */
  public record InNone(String title, String because) {}

  /**
   * What a sum of money buys.
   *
   * @param money the sum, for first costs [currency]
   * @param titles the measures; none where nothing that helps costs so little
   * @param spent their first cost [currency]
   * @param stopGap true where one of them is a stop-gap
   * @param mouldMonths months at risk of mould that are left
   * @param lacksM3S air that is still lacking [m³/s]
   */
  public record BudgetBuys(
      double money,
      List<String> titles,
      double spent,
      boolean stopGap,
      int mouldMonths,
      double lacksM3S) {
    /** Copies the list. */
    public BudgetBuys {
      titles = List.copyOf(titles);
    }
  }
}
