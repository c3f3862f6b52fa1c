package org.drysill.options;

import java.util.List;

/**
 * Something that comes before every measure: no fan and no window cures it.
 *
 * @param id stable id, such as {@code unflued-heater}
 * @param title what to do, as an instruction
 * @param because what was seen that asks for it
 * @param rooms the ids of the rooms that it is about
 * @param cautions the ids of the cautions that belong to it
 */
public record FirstThing(
    String id, String title, String because, List<String> rooms, List<String> cautions) {
  /** Copies the lists. */
  public FirstThing {
    rooms = List.copyOf(rooms);
    cautions = List.copyOf(cautions);
  }
}
