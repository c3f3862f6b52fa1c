package org.drysill.assess.model;

/**
 * Where each unknown stands in a vector: those of the home, then fans, rooms, ways. Each is counted
 * in standard deviations from what was believed.
 *
 * @param fans number of fans
 * @param rooms number of rooms
 * @param ways number of ways between rooms
 */
record Unknowns(int fans, int rooms, int ways) {
  /** Logarithm of the infiltration. */
  static final int LEAKS = 0;

  /** Logarithm of the water of all sources. */
  static final int WATER = 1;

  /** Logarithm of the moment against the mean of days, common to all rooms. */
  static final int MOMENT = 2;

  /** Error of the outdoor reading. */
  static final int OUTDOOR = 3;

  /** Error of the hygrometer indoors. */
  static final int INSTRUMENT = 4;

  /** Logarithm of the water that panes take. */
  static final int GLASS = 5;

  private static final int OF_HOME = 6;

  /** Logarithm of a fan's flow. */
  int fan(int fan) {
    return OF_HOME + fan;
  }

  /** Logarithm of a room's part in the water, before all parts are made to sum to 1. */
  int room(int room) {
    return OF_HOME + fans + room;
  }

  /** Logarithm of what passes both ways between two rooms. */
  int way(int way) {
    return OF_HOME + fans + rooms + way;
  }

  /** How many there are. */
  int count() {
    return OF_HOME + fans + rooms + ways;
  }
}
