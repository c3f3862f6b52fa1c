package org.drysill.assess.surfaces;

import java.util.List;
import org.drysill.assess.Figure;

/**
 * What other glazing would do for a window, the moisture of its room as it is.
 *
 * @param item the survey's id of the window
 * @param roomName the room's name in sentences
 * @param name its own name in sentences
 * @param now what it has, in words
 * @param wetMorningsNow mornings on which its coldest part is seen to be wet, as it is
 * @param choices other kinds of glazing in the order of their price
 */
public record OtherGlazing(
    String item,
    String roomName,
    String name,
    String now,
    Figure wetMorningsNow,
    List<Choice> choices) {
  /** Copies the list. */
  public OtherGlazing {
    choices = List.copyOf(choices);
  }

  /**
   * Another kind of glazing.
   *
   * @param glazing its name
   * @param wetMornings mornings on which the coldest part of the pane is seen to be wet
   */
  public record Choice(String glazing, Figure wetMornings) {}
}
