package org.drysill.report.block;

import java.util.List;

/**
 * Something to do.
 *
 * @param margin notes beside it
 * @param number its place in the order; may be empty
 * @param title what to do, printed bold
 * @param text why and to what effect
 * @param more further sentences
 * @param cautions what can hurt someone
 */
public record Step(
    List<Note> margin,
    String number,
    String title,
    String text,
    List<String> more,
    List<CautionBlock> cautions)
    implements Block {
  /** Copies the lists. */
  public Step {
    margin = List.copyOf(margin);
    more = List.copyOf(more);
    cautions = List.copyOf(cautions);
  }

  /** Whether it is so high that a page's end may cut it. */
  public boolean tall() {
    return Room.isTall(this);
  }

  @Override
  public String kind() {
    return "step";
  }
}
