package org.drysill.assess.ventilation;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.reference.rules.ExtractMode;
import org.drysill.reference.rules.RoomGroup;
import org.drysill.reference.rules.Terminal;

/**
 * What one rule set asks of single rooms: of the fans of wet rooms while they run, and of windows
 * while a room is aired.
 *
 * @param id the rule set's id
 * @param title the document's title
 * @param edition its edition
 * @param place where it applies
 * @param governing true for the one that governs here
 * @param asks the extract rates of kitchens, bathrooms and WCs, as printed
 * @param airing air changes of a room while it is aired [1/h]; empty where none are printed
 * @param sources where they are printed
 */
public record RoomRule(
    String id,
    String title,
    String edition,
    String place,
    boolean governing,
    List<Ask> asks,
    Optional<Double> airing,
    List<Citation> sources) {
  /** Copies the lists. */
  public RoomRule {
    asks = List.copyOf(asks);
    sources = List.copyOf(sources);
  }

  /**
   * One extract rate.
   *
   * @param room the kind of room
   * @param mode how the fan runs
   * @param terminal where the air is taken, where that matters
   * @param printedAirChange air changes of the room [1/h], where the document prints those
   * @param flowM3S the rate [m³/s]; empty for air changes of a kind of room that this home lacks
   * @param roomAirChange the same as air changes of the first such room of this home [1/h]; empty
   *     where it has none
   * @param homeAirChange the same as air changes of the whole home [1/h]
   */
  public record Ask(
      RoomGroup room,
      ExtractMode mode,
      Optional<Terminal> terminal,
      Optional<Double> printedAirChange,
      Optional<Double> flowM3S,
      Optional<Double> roomAirChange,
      Optional<Double> homeAirChange) {}
}
