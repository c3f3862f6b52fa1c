package org.drysill.physics.recovery.cycle;

/**
 * From one turn to the next of the same kind. A turn is timed where the temperature, on its way
 * back from the judged half to that of the air before the face, is half way: there it moves
 * fastest, so that scatter hardly shifts it.
 *
 * @param from the turn at its start [s]
 * @param to the turn at its end [s]
 */
record Cycle(double from, double to) {
  double length() {
    return to - from;
  }
}
