package org.drysill.reference.ventilation;

import org.drysill.yaml.Worded;

/** Fans as planning assumptions tell them apart. */
public enum FanSort implements Worded {
  /** Takes air out now and then. */
  INTERMITTENT_EXTRACT,
  /** A cooker hood that blows outside. */
  EXTRACT_HOOD,
  /** Takes air out all the time. */
  CONTINUOUS_EXTRACT,
  /** Blows air in. */
  POSITIVE_INPUT,
  /** Turns its direction. */
  ALTERNATING,
  /** In and out at the same time in one room. */
  SINGLE_ROOM_EXCHANGE,
  /** In and out by ducts for the whole home. */
  WHOLE_HOME_EXCHANGE,
  /** A duct to the roof without a fan. */
  PASSIVE_STACK
}
