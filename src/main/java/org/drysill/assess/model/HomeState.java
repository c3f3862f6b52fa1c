package org.drysill.assess.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The home as it may be, one of many states that its readings leave possible.
 *
 * @param zones its rooms, ways and panes in that state
 * @param leaks air through leaks and ventilators, by its most likely value [1]
 * @param fans mean flow of each fan by its most likely value [1], by the survey's id
 * @param water water of all sources, by its most likely value [1]
 * @param doors air both ways through shut doors, by its most likely value [1]
 * @param glass water that panes take, by its most likely value [1]
 * @param moment the moment of the visit against the mean of days [1]
 * @param hygrometer error of the hygrometer indoors, in standard deviations
 * @param outdoors error of the outdoor reading, in standard deviations
 * @param excess mean vapour excess of each zone, by its most likely value [1]
 */
public record HomeState(
    ZonedHome zones,
    double leaks,
    Map<String, Double> fans,
    double water,
    double doors,
    double glass,
    double moment,
    double hygrometer,
    double outdoors,
    List<Double> excess) {
  /** Copies what it holds. */
  public HomeState {
    fans = Map.copyOf(fans);
    excess = List.copyOf(excess);
  }

  /** A fan's flow by its most likely value [-]; 1 for one that is not known to move anything. */
  public double fan(String id) {
    return Optional.ofNullable(fans.get(id)).orElse(1.0);
  }
}
