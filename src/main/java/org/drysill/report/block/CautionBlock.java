package org.drysill.report.block;

import java.util.List;

/**
 * A caution: an upright rule and bold first words.
 *
 * @param margin notes beside it
 * @param hazard the hazard, printed bold
 * @param text what can happen, how to avoid it, whom to ask
 */
public record CautionBlock(List<Note> margin, String hazard, String text) implements Block {
  /** Copies the lists. */
  public CautionBlock {
    margin = List.copyOf(margin);
  }

  @Override
  public String kind() {
    return "caution";
  }
}
