package org.drysill.assess.logs;

/** Where the outdoor air beside a room's log comes from, the best first. */
public enum OutdoorSource {
  /** An outdoor log of the same time. */
  LOG,
  /** Outdoor readings near in time. */
  READINGS,
  /** The months of a climate: not of the same time. */
  CLIMATE;

  /** True where it is of the same time as the room's. */
  public boolean simultaneous() {
    return this != CLIMATE;
  }
}
