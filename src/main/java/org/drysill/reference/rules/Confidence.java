package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** How sure a remembered value is. */
public enum Confidence implements Worded {
  /** Remembered well, by several paths. */
  HIGH,
  /** Remembered, not by several paths. */
  MEDIUM,
  /** Doubtful: shown, and never a limit that a verdict rests on. */
  LOW
}
