package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** Where a kitchen is extracted. */
public enum Terminal implements Worded {
  /** A hood above the cooker that blows outside. */
  HOOD,
  /** Anywhere else in the room. */
  ELSEWHERE
}
