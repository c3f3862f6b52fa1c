package org.drysill.assess.ventilation.required;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.physics.Range;
import org.drysill.reference.rules.Term;

/** Computes what the terms of rule sets ask of a home. */
public final class Demands {
  private final RuleFacts facts;

  private Demands(RuleFacts facts) {
    this.facts = facts;
  }

  /** What a term asks of a home with these facts. */
  public static Demand of(Term term, RuleFacts facts) {
    return new Demands(facts).demand(term);
  }

  private Demand demand(Term term) {
    List<Demand> parts = parts(term).stream().map(this::demand).toList();
    List<String> missing = missing(term, parts);
    List<Term> used = used(term, parts);
    if (!missing.isEmpty()) {
      return new Demand(Optional.empty(), "", List.of(), missing, used);
    }
    Range rate = term.rate().on(new RateInHome(facts, parts)).times(term.factor().orElse(1.0));
    List<Demand.Part> shown = shown(term, rate, parts);
    String governs =
        shown.stream().filter(Demand.Part::governs).findFirst().map(Demand.Part::name).orElse("");
    return new Demand(Optional.of(rate), governs, shown, missing, used);
  }

  /** The parts of a combination that hold for this home. */
  private List<Term> parts(Term term) {
    return term.parts().stream().filter(p -> p.when().map(facts::holds).orElse(true)).toList();
  }

  private List<String> missing(Term term, List<Demand> parts) {
    Stream<String> own = term.rate().on(new FactsNeeded(facts)).stream();
    return Stream.concat(own, parts.stream().flatMap(p -> p.missing().stream()))
        .distinct()
        .toList();
  }

  /** Every term with a value of its own that had a say. */
  private static List<Term> used(Term term, List<Demand> parts) {
    List<Term> used = new ArrayList<>();
    if (term.source().isPresent()) {
      used.add(term);
    }
    parts.forEach(part -> used.addAll(part.used()));
    return used;
  }

  private List<Demand.Part> shown(Term term, Range rate, List<Demand> parts) {
    if (term.greatestOf().isEmpty()) {
      return List.of(new Demand.Part(name(term), rate, term, true));
    }
    List<Term> terms = parts(term);
    if (terms.isEmpty()) {
      return List.of();
    }
    double factor = term.factor().orElse(1.0);
    int governing =
        Stream.iterate(0, i -> i + 1)
            .limit(terms.size())
            .max(
                Comparator.comparingDouble((Integer i) -> likely(parts.get(i)))
                    .thenComparing(Comparator.<Integer>reverseOrder()))
            .orElseThrow();
    List<Demand.Part> shown = new ArrayList<>();
    for (int i = 0; i < terms.size(); i++) {
      Range own = parts.get(i).rate().orElseThrow().times(factor);
      shown.add(new Demand.Part(name(terms.get(i)), own, terms.get(i), i == governing));
    }
    return shown;
  }

  private static double likely(Demand part) {
    return part.rate().orElseThrow().likely();
  }

  private static String name(Term term) {
    return term.name().orElse("the rate of the document");
  }
}
