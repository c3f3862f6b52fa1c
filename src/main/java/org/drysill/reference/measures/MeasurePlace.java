package org.drysill.reference.measures;

import org.drysill.yaml.Worded;

/** To what a measure applies. */
public enum MeasurePlace implements Worded {
  /** The home as a whole. */
  HOME,
  /** A room where water is used. */
  WET_ROOM,
  /** A kitchen. */
  KITCHEN,
  /** A room where people stay. */
  HABITABLE_ROOM,
  /** Any room. */
  ROOM,
  /** A window. */
  WINDOW,
  /** A cold spot. */
  COLD_SPOT,
  /** A fan that is there. */
  FAN
}
