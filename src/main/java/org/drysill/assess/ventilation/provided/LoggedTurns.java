package org.drysill.assess.ventilation.provided;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;

/**
 * How an alternating unit turns, from a log of its cycles.
 *
 * @param supplyTime length of the half cycle in which it blows in, its pause included [s]
 * @param otherTime length of the other half [s]
 * @param pause how long it stands still at a turn at least [s], where the log shows it
 */
public record LoggedTurns(Figure supplyTime, Figure otherTime, Optional<Figure> pause) {
  /** Mean of both halves [s]. */
  Range halfCycle() {
    return Range.exactly((supplyTime.likely() + otherTime.likely()) / 2);
  }

  List<Input> inputs() {
    List<Input> inputs = new ArrayList<>();
    inputs.add(Input.of("t in", supplyTime));
    inputs.add(Input.of("t out", otherTime));
    pause.ifPresent(p -> inputs.add(Input.of("p logged", p)));
    return inputs;
  }
}
