package org.drysill.assess.ventilation;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Verdict;
import org.drysill.reference.Citation;
import org.drysill.reference.rules.Confidence;
import org.drysill.reference.rules.Counts;

/**
 * What one rule set, or one variant of it, asks of this home.
 *
 * @param id the rule set's id, with {@code /variant} for all but its first variant
 * @param title the document's title
 * @param edition its edition
 * @param place where it applies
 * @param variant the name of the variant, such as {@code Category II}; empty where there is one
 *     only
 * @param purpose what the figure is meant for, in one sentence
 * @param governing true for the one that governs here
 * @param counts which air is held against it
 * @param required what it asks of the whole home [m³/s]; empty where a fact is missing
 * @param airChange the same as air changes of this home [1/h]
 * @param perPerson the same by person who lives here [m³/s]
 * @param perFloorArea the same by floor area [m³/(s·m²)]
 * @param governedBy the term that decides; empty where nothing could be computed
 * @param fromMemory true where a value behind it was remembered and not read again
 * @param confidence how sure a remembered value is, the least of all
 * @param status one line: governs, for comparison, unconfirmed, or which fact is missing
 * @param verdict the air that the home gets, held against it; unknown where a fact is missing or a
 *     remembered figure is doubtful
 * @param missing the facts that the survey lacks for it
 * @param sources where it is printed
 */
public record RuleComparison(
    String id,
    String title,
    String edition,
    String place,
    Optional<String> variant,
    String purpose,
    boolean governing,
    Counts counts,
    Optional<Figure> required,
    Optional<Figure> airChange,
    Optional<Figure> perPerson,
    Optional<Figure> perFloorArea,
    String governedBy,
    boolean fromMemory,
    Optional<Confidence> confidence,
    String status,
    Verdict verdict,
    List<String> missing,
    List<Citation> sources) {
  /** Copies the lists. */
  public RuleComparison {
    missing = List.copyOf(missing);
    sources = List.copyOf(sources);
  }
}
