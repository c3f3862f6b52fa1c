package org.drysill.physics.tracer.event;

import java.util.OptionalDouble;

/**
 * A rise or sudden fall of vapour.
 *
 * @param kind what its shape looks like
 * @param startHours when it begins [h], on the clock of the series
 * @param peakHours when it turns back [h]
 * @param recoveredHours when it is over [h]; empty where the next event, a gap or the end of the
 *     log hides that
 * @param change from start to turn, in the unit of the series; negative for a fall
 */
public record VapourEvent(
    EventKind kind,
    double startHours,
    double peakHours,
    OptionalDouble recoveredHours,
    double change) {
  /** How long it takes from its turn to be over [h]; empty where that is hidden. */
  public OptionalDouble hoursToRecover() {
    return recoveredHours.isPresent()
        ? OptionalDouble.of(recoveredHours.getAsDouble() - peakHours)
        : OptionalDouble.empty();
  }
}
