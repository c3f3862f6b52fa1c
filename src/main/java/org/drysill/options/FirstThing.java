package org.drysill.options;

import java.util.List;
import java.util.Optional;

/**
 * Something that comes before every measure: an appliance to be made safe, a cause that no fan and
 * no window cures, a fan that does not do what it was bought for.
 *
 * @param id stable id, such as {@code unflued-heater}
 * @param title what to do, as an instruction
 * @param because what was seen that asks for it
 * @param rooms the ids of the rooms that it is about
 * @param cautions the ids of the cautions that belong to it
 * @param effect what it does to air and surfaces, where that can be reckoned
 * @param money what it costs, where a price is known
 */
public record FirstThing(
    String id,
    String title,
    String because,
    List<String> rooms,
    List<String> cautions,
    Optional<MeasureEffect> effect,
    Optional<MeasureMoney> money) {
  /** Copies the lists. */
  public FirstThing {
    rooms = List.copyOf(rooms);
    cautions = List.copyOf(cautions);
  }
}
