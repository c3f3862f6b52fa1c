package org.drysill.reference.ventilation;

import org.drysill.yaml.Worded;

/** When a fan runs, as planning assumptions tell it apart. */
public enum RunPattern implements Worded {
  /** All the time. */
  CONTINUOUS,
  /** When the air is moist. */
  HUMIDITY_CONTROLLED,
  /** With the light. */
  WITH_LIGHT,
  /** When someone switches it. */
  MANUAL,
  /** The survey does not say. */
  NOT_STATED
}
