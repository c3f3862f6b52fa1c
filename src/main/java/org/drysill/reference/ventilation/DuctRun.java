package org.drysill.reference.ventilation;

import org.drysill.yaml.Worded;

/** How far a fan blows, as deratings tell it apart. */
public enum DuctRun implements Worded {
  /** Straight through a wall. */
  THROUGH_WALL,
  /** A short taut duct with one bend at most. */
  SHORT_DUCT,
  /** A long, bent or slack duct. */
  LONG_OR_SLACK_DUCT,
  /** A system made to blow through ducts. */
  DUCTED_SYSTEM,
  /** Nobody has looked. */
  NOT_KNOWN
}
