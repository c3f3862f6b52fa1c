package org.drysill.options.rank;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.money.Costed;
import org.drysill.options.site.Candidate;

/**
 * A measure as the ranking sees it.
 *
 * @param costed its effect and money
 * @param cautions the cautions that belong to it, the gravest first
 * @param admissible whether it can be done without a safety test first
 */
public record Entry(Costed costed, List<ShownCaution> cautions, boolean admissible) {
  /** Copies the list. */
  public Entry {
    cautions = List.copyOf(cautions);
  }

  /** The same once the safety test that it may need is passed. */
  public Entry asTested() {
    return new Entry(costed, cautions, true);
  }

  Progress progress() {
    return new Progress(costed.studied().effect());
  }

  /** How far it goes, in whole steps. */
  long steps(double step) {
    // A hair is added so that a share of exactly one step counts as reached.
    return (long) Math.floor(progress().share() / step + 1e-9);
  }

  /** True for what relieves the sign and leaves the cause. */
  public boolean isStopGap() {
    return costed.studied().candidate().measure().isStopGap();
  }

  double wetGlassMonths() {
    return costed.studied().effect().wetGlassMonths().map(Figure::likely).orElse(0.0);
  }

  /** What is open or lacking today and settled by it, by the ids of findings. */
  List<String> settles() {
    return costed.studied().effect().settles();
  }

  /** Yearly cost over the horizon [currency/a]; infinite where it is not known. */
  public double annualCost() {
    return costed.annualCost().orElse(Double.POSITIVE_INFINITY);
  }

  /** First cost [currency]; infinite where it is not known. */
  public double firstCost() {
    return costed.firstCost().orElse(Double.POSITIVE_INFINITY);
  }

  /** True where both cannot be done: they exclude each other at a place, or replace one fan. */
  public boolean excludes(Entry other) {
    Candidate mine = costed.studied().candidate();
    Candidate theirs = other.costed.studied().candidate();
    boolean named =
        mine.measure().exclusions().contains(theirs.measure().id())
            || theirs.measure().exclusions().contains(mine.measure().id());
    return (named && mine.scope().meets(theirs.scope())) || takesTheSameFan(other);
  }

  private boolean takesTheSameFan(Entry other) {
    return costed.studied().replaced().stream()
        .anyMatch(f -> other.costed.studied().replaced().contains(f));
  }
}
