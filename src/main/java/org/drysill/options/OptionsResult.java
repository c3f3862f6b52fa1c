package org.drysill.options;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.reference.Citation;

/**
 * What could be done in a home, in the order in which it deserves the money.
 *
 * @param first what comes before every measure: unsafe appliances, leaks, water from outside, fans
 *     that are there and do not work
 * @param repaired how far that is taken as done in what follows; empty where nothing comes first
 *     but safety
 * @param ranked the measures with a shown effect here that the budget reaches, best first
 * @param beyondBudget the measures with a shown effect that are dearer than the budget, ranked
 *     among themselves; none where the survey states no budget
 * @param notHere the other measures, each with the reason, those that the survey leaves out first
 * @param budget what the stated money buys; empty where the survey states none
 * @param order the ids of ranked measures in the order of the works: the steps of the best package,
 *     else the ranking without what an earlier one excludes or has done already
 * @param packages every sensible combination of measures; empty where there is nothing to combine
 * @param next what to measure next, that which takes away most of the doubt first; none where
 *     nothing that was reckoned is in doubt
 * @param fansNow what the fans of today cost to run
 * @param rule the ranking rule in plain sentences, in the order in which it is applied
 * @param cautions the cautions of the ranked measures, the gravest first; those that the home calls
 *     for as it stands are among the assessment's
 * @param assumptions what was taken for granted here
 * @param sources where prices and factors come from
 */
public record OptionsResult(
    List<FirstThing> first,
    Optional<Repaired> repaired,
    List<RankedMeasure> ranked,
    List<RankedMeasure> beyondBudget,
    List<NotHere> notHere,
    Optional<Budget> budget,
    List<String> order,
    Optional<PackagesResult> packages,
    List<NextReading> next,
    List<FanRunningCost> fansNow,
    List<String> rule,
    List<ShownCaution> cautions,
    List<Assumption> assumptions,
    List<Citation> sources) {
  /** Copies the lists. */
  public OptionsResult {
    first = List.copyOf(first);
    ranked = List.copyOf(ranked);
    beyondBudget = List.copyOf(beyondBudget);
    order = List.copyOf(order);
    notHere = List.copyOf(notHere);
    next = List.copyOf(next);
    fansNow = List.copyOf(fansNow);
    rule = List.copyOf(rule);
    cautions = List.copyOf(cautions);
    assumptions = List.copyOf(assumptions);
    sources = List.copyOf(sources);
  }

  /** The measures in the order of the works; no two of them exclude each other. */
  public List<RankedMeasure> works() {
    return order.stream().flatMap(id -> ranked.stream().filter(m -> m.id().equals(id))).toList();
  }
}
