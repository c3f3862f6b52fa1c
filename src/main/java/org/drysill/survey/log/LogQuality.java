package org.drysill.survey.log;

import java.util.List;
import java.util.Optional;

/**
 * What is odd about a log; nothing is dropped without a note here.
 *
 * @param notes one for each sort of oddity and quantity that was met
 */
public record LogQuality(List<LogNote> notes) {
  /** Copies the list. */
  public LogQuality {
    notes = List.copyOf(notes);
  }

  /** The notes of one sort. */
  public List<LogNote> of(LogFlaw flaw) {
    return notes.stream().filter(n -> n.flaw() == flaw).toList();
  }

  /** How often a sort of oddity was met. */
  public long count(LogFlaw flaw) {
    return of(flaw).stream().mapToLong(LogNote::count).sum();
  }

  /** The note of one sort and quantity. */
  public Optional<LogNote> of(LogFlaw flaw, LogQuantity quantity) {
    return of(flaw).stream().filter(n -> n.quantity().equals(Optional.of(quantity))).findFirst();
  }
}
