package org.drysill.assess.cautions;

import java.util.List;
import java.util.Optional;

/**
 * The cautions that the facts of a survey call for, the gravest first.
 *
 * @param shown the cautions, each with the reason
 */
public record CautionsResult(List<ShownCaution> shown) {
  /** Copies the list. */
  public CautionsResult {
    shown = List.copyOf(shown);
  }

  /** The caution with an id. */
  public Optional<ShownCaution> caution(String id) {
    return shown.stream().filter(c -> c.id().equals(id)).findFirst();
  }
}
