package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** Rooms as rule sets group them. */
public enum RoomGroup implements Worded {
  /** Where people stay: living, dining, bed rooms, studies. */
  HABITABLE,
  /** Where people sleep. */
  BEDROOM,
  /** Where people stay by day. */
  LIVING,
  /** Where people cook. */
  KITCHEN,
  /** With a bath or shower, with or without a WC. */
  BATHROOM,
  /** A WC without bath or shower. */
  SANITARY,
  /** Where clothes are washed. */
  UTILITY
}
