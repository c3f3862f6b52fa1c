package org.drysill.reference.rules;

import org.drysill.yaml.Worded;

/** Which air is held against a whole-home rate. */
public enum Counts implements Worded {
  /** Air by fans and by leaks. */
  ALL_OUTDOOR_AIR,
  /** Air by fans; what leaks do is allowed for in the rate. */
  FANS_ONLY
}
