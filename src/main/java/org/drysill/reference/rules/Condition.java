package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** When a value of a rule set holds. */
public enum Condition implements Worded {
  /** The home has a single habitable room. */
  ONE_HABITABLE_ROOM,
  /** The home has more than one habitable room. */
  SEVERAL_HABITABLE_ROOMS,
  /** The home is on one storey. */
  SINGLE_STOREY,
  /** The home is on two storeys or more. */
  MULTI_STOREY,
  /** No wall of the room looks outside. */
  NO_EXTERNAL_WALL
}
