package org.drysill.assess.ventilation.rooms;

/**
 * A way of air between two places.
 *
 * @param from index of a place
 * @param to index of the other
 * @param areaM2 free area of the closed door, or of a way without door [m²]
 * @param kind how it is known
 */
record Way(int from, int to, double areaM2, Kind kind) {
  /** How a way is known. */
  enum Kind {
    /** A door with a gap that was measured. */
    MEASURED,
    /** A door whose gap was not measured. */
    GAP_ASSUMED,
    /** Halls one above the other or beside each other, without a door that was measured. */
    OPEN,
    /** A door that the survey does not list. */
    DOOR_ASSUMED
  }

  boolean joins(int a, int b) {
    return (from == a && to == b) || (from == b && to == a);
  }
}
