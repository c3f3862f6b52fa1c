package org.drysill.assess.recovery.cycle;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;

/**
 * What a log of cycles gives.
 *
 * @param difference indoors less outdoors [K], where both are known
 * @param supplyRatio over whole supply half-cycles; empty where the log cannot be used
 * @param exhaustRatio over whole exhaust half-cycles, where that grille was logged
 * @param seen how the unit turns; empty where the log cannot be used
 * @param weak why it tells less than it should, in clauses; none where it tells much
 * @param refused why it cannot be used, in a sentence
 * @param warnings what else makes it doubtful
 * @param assumptions what was taken for granted
 */
public record LoggedCycles(
    Optional<Figure> difference,
    Optional<Figure> supplyRatio,
    Optional<Figure> exhaustRatio,
    Optional<CyclesSeen> seen,
    List<String> weak,
    Optional<String> refused,
    List<String> warnings,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public LoggedCycles {
    weak = List.copyOf(weak);
    warnings = List.copyOf(warnings);
    assumptions = List.copyOf(assumptions);
  }

  /** A log that cannot be used, for a reason in a sentence. */
  public static LoggedCycles refused(Optional<Figure> difference, String why) {
    return new LoggedCycles(
        difference,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.of(why),
        List.of(),
        List.of());
  }
}
