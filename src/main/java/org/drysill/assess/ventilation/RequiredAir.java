package org.drysill.assess.ventilation;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * What the governing rule set asks of the whole home.
 *
 * @param wholeHome the rate [m³/s]; {@code ventilation.whole_home.required}; empty where a fact is
 *     missing
 * @param governedBy the term that decides, such as {@code by number of bedrooms}
 * @param terms what each term of the rule alone would ask, in the order of the document
 * @param notes what the document leaves open, or how sure its figures are
 */
public record RequiredAir(
    Optional<Figure> wholeHome, String governedBy, List<Term> terms, List<String> notes) {
  /** Copies the lists. */
  public RequiredAir {
    terms = List.copyOf(terms);
    notes = List.copyOf(notes);
  }

  /**
   * One term of the rule.
   *
   * @param name what it counts by
   * @param rate what it alone would ask [m³/s]
   * @param governs whether it decides
   */
  public record Term(String name, Figure rate, boolean governs) {}
}
