package org.drysill.options;

import java.util.List;

/**
 * A measure at a place of this home, with its rank and the reasons for it.
 *
 * @param rank 1 for the best
 * @param id stable id of this application, such as {@code continuous-extract.bathroom}
 * @param measure the id of the measure
 * @param title what it is, such as {@code Continuous extract fan in the bathroom}
 * @param scope where it applies
 * @param changes what it changes, in plain words
 * @param because why it is considered here
 * @param admissible whether it can be done without a safety test first
 * @param effect what it does to air, moisture and surfaces
 * @param money what it costs and saves
 * @param benefits what is not counted in money
 * @param cautions the ids of the cautions that belong to it, the gravest first
 * @param prerequisites what must be done before it here, or be looked at on site
 * @param exclusions the titles of measures that it cannot stand beside
 * @param reasons why it ranks where it does, in at most three sentences with figures
 */
public record RankedMeasure(
    int rank,
    String id,
    String measure,
    String title,
    Scope scope,
    String changes,
    String because,
    boolean admissible,
    MeasureEffect effect,
    MeasureMoney money,
    Benefits benefits,
    List<String> cautions,
    List<String> prerequisites,
    List<String> exclusions,
    List<String> reasons) {
  /** Copies the lists. */
  public RankedMeasure {
    cautions = List.copyOf(cautions);
    prerequisites = List.copyOf(prerequisites);
    exclusions = List.copyOf(exclusions);
    reasons = List.copyOf(reasons);
  }
}
