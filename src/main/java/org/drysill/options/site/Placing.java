package org.drysill.options.site;

import java.util.List;
import java.util.Optional;
import org.drysill.options.NotHere;
import org.drysill.reference.measures.Measure;

/**
 * Where a measure could go.
 *
 * @param measure the measure
 * @param candidates its candidates; empty where no place meets its conditions
 * @param refusal why not, where there is none
 */
public record Placing(Measure measure, List<Candidate> candidates, Optional<NotHere> refusal) {
  /** Copies the list. */
  public Placing {
    candidates = List.copyOf(candidates);
  }
}
