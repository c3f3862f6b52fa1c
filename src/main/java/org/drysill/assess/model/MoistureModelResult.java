package org.drysill.assess.model;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;

/**
 * What the readings of all rooms tell together.
 *
 * @param silent why they cannot be put together; empty where they were
 * @param rooms the heated rooms in the order of the survey
 * @param unknowns what was not known, before and after
 * @param glass water that settles on the panes in weather like that of the visit [kg/s]; empty
 *     where no pane is known
 * @param together how closely water and air move together after the readings, as correlation of
 *     their logarithms, −1 to 1
 * @param split what the readings say of water and air, as a finding that names the reading that
 *     would say more
 * @param zones the home as zones, at the likely values; empty where nothing was put together
 * @param states the states in which its readings leave it possible
 * @param assumptions what was taken for granted
 */
public record MoistureModelResult(
    Optional<String> silent,
    List<ModelledRoom> rooms,
    List<FittedUnknown> unknowns,
    Optional<Figure> glass,
    Optional<Figure> together,
    Optional<Finding> split,
    Optional<ZonedHome> zones,
    HomeStates states,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public MoistureModelResult {
    rooms = List.copyOf(rooms);
    unknowns = List.copyOf(unknowns);
    assumptions = List.copyOf(assumptions);
  }

  /** Nothing could be put together. */
  static MoistureModelResult silent(String why) {
    return new MoistureModelResult(
        Optional.of(why),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        HomeStates.none(),
        List.of());
  }

  /** The rooms whose readings the model cannot explain. */
  public List<ModelledRoom> unexplained() {
    return rooms.stream().filter(room -> !room.explained()).toList();
  }
}
