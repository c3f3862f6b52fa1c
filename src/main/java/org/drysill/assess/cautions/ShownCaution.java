package org.drysill.assess.cautions;

import java.util.List;
import org.drysill.reference.cautions.Caution;

/**
 * A caution that is printed, with the reason.
 *
 * @param caution its text and source
 * @param because what was seen, or is not known, that calls for it
 * @param rooms the ids of the rooms that it is about; empty for the whole home
 */
public record ShownCaution(Caution caution, String because, List<String> rooms) {
  /** Copies the list. */
  public ShownCaution {
    rooms = List.copyOf(rooms);
  }

  /** The caution's id. */
  public String id() {
    return caution.id();
  }
}
