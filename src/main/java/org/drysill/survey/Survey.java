package org.drysill.survey;

import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * The whole survey of a home.
 *
 * @param drysill format of this file: 1
 * @param visit when, by whom, why and with what the home was visited
 * @param dwelling the home as a whole
 * @param prices prices and the horizon for money figures
 * @param outdoorReadings outdoor air at the time of the visit
 * @param outdoorLogger a log of outdoor air
 * @param rooms the rooms, one at least
 * @param options what to leave out, the budget, own prices
 */
public record Survey(
    @Key(about = "Format of this file: 1", min = 1, max = 1, example = "1") int drysill,
    @Key(about = "When, by whom, why and with what the home was visited") Visit visit,
    @Key(about = "The home as a whole") Dwelling dwelling,
    @Key(about = "Prices and the horizon for money figures") Optional<Prices> prices,
    @Key(about = "Outdoor air at the time of the visit") List<OutdoorReading> outdoorReadings,
    @Key(about = "A log of outdoor air") Optional<Logger> outdoorLogger,
    @Key(about = "The rooms, one at least", required = true) List<Room> rooms,
    @Key(about = "What to leave out, the budget, own prices") Optional<OptionWishes> options) {
  /** Copies the lists. */
  public Survey {
    outdoorReadings = List.copyOf(outdoorReadings);
    rooms = List.copyOf(rooms);
  }

  /** The same with another account of the visit. */
  public Survey with(Visit other) {
    return new Survey(
        drysill, other, dwelling, prices, outdoorReadings, outdoorLogger, rooms, options);
  }
}
