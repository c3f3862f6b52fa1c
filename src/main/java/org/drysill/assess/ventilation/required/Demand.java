package org.drysill.assess.ventilation.required;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.rules.Confidence;
import org.drysill.reference.rules.Term;

/**
 * What a term asks of a home.
 *
 * @param rate the rate [m³/s]; empty where a fact is missing
 * @param governedBy the name of the part that decides
 * @param parts the parts that the term chooses among, or the term itself
 * @param missing the facts that are missing
 * @param used the terms with a value that were used
 */
public record Demand(
    Optional<Range> rate,
    String governedBy,
    List<Part> parts,
    List<String> missing,
    List<Term> used) {
  /** Copies the lists. */
  public Demand {
    parts = List.copyOf(parts);
    missing = List.copyOf(missing);
    used = List.copyOf(used);
  }

  /**
   * One part of a rule.
   *
   * @param name what it counts by
   * @param rate what it alone would ask [m³/s]
   * @param term the part of the rule
   * @param governs whether it decides
   */
  public record Part(String name, Range rate, Term term, boolean governs) {}

  /** Where the values are printed. */
  public List<Citation> sources() {
    return used.stream().flatMap(t -> t.source().stream()).distinct().toList();
  }

  /** True where a value was remembered and not read again. */
  public boolean fromMemory() {
    return sources().stream().anyMatch(s -> s.how() == How.MEMORY);
  }

  /** The least sure of the remembered values. */
  public Optional<Confidence> confidence() {
    return used.stream().flatMap(t -> t.confidence().stream()).max(Confidence::compareTo);
  }

  /** What the documents leave open. */
  public List<String> notes() {
    return used.stream().flatMap(t -> t.note().stream()).distinct().toList();
  }
}
