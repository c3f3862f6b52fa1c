package org.drysill.assess.recovery;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Finding;

/**
 * Heat recovery in use.
 *
 * @param units the units in the order of the survey
 * @param assumptions what was taken for granted
 */
public record HeatRecoveryResult(List<RecoveryUnit> units, List<Assumption> assumptions) {
  /** Copies the lists. */
  public HeatRecoveryResult {
    units = List.copyOf(units);
    assumptions = List.copyOf(assumptions);
  }

  /** The unit with an id of the survey. */
  public Optional<RecoveryUnit> unit(String id) {
    return units.stream().filter(u -> u.id().equals(id)).findFirst();
  }

  /** All findings, unit by unit. */
  public List<Finding> findings() {
    return units.stream().flatMap(u -> u.declaredAgainstMeasured().stream()).toList();
  }
}
